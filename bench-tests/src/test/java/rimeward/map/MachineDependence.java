package rimeward.map;

import com.tngtech.archunit.core.domain.JavaAccess;
import java.util.Set;

/**
 * Calls whose answer may differ between JDKs, processors or places. {@link Math} leaves its transcendental functions to the
 * processor, within an error; {@link StrictMath} does not.
 */
final class MachineDependence {

    /** Members of {@link Math} that the Java specification fixes to the last bit. */
    private static final Set<String> EXACT = Set.of(
            "abs",
            "absExact",
            "addExact",
            "ceil",
            "ceilDiv",
            "ceilMod",
            "copySign",
            "decrementExact",
            "floor",
            "floorDiv",
            "floorMod",
            "fma",
            "incrementExact",
            "max",
            "min",
            "multiplyExact",
            "multiplyFull",
            "multiplyHigh",
            "negateExact",
            "nextAfter",
            "nextDown",
            "nextUp",
            "rint",
            "round",
            "scalb",
            "signum",
            "sqrt",
            "subtractExact",
            "toIntExact",
            "ulp",
            "PI",
            "E");

    /** Their samplers call {@link Math}; {@code java.util.Random.nextGaussian} is specified with {@link StrictMath}. */
    private static final Set<String> SAMPLERS = Set.of("nextGaussian", "nextExponential");

    private MachineDependence() {}

    static boolean isCauseOf(JavaAccess<?> access) {
        String name = access.getName();
        return switch (access.getTargetOwner().getName()) {
            case "java.lang.Math" -> !EXACT.contains(name);
            case "java.lang.System" -> name.equals("lineSeparator") || name.equals("identityHashCode");
            case "java.util.SplittableRandom", "java.util.random.RandomGenerator" -> SAMPLERS.contains(name);
            case "java.util.Locale", "java.util.TimeZone" -> name.equals("getDefault");
            case "java.time.ZoneId" -> name.equals("systemDefault");
            case "java.nio.charset.Charset" -> name.equals("defaultCharset");
            default -> false;
        };
    }
}
