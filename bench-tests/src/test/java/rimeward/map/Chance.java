package rimeward.map;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;

/** Calls that draw numbers from an unnamed source. Chance comes from named, seeded streams, so that a run can be had again. */
final class Chance {

    /** A secret that can be had again is none. */
    private static final String KEEPER_OF_SECRETS = "rimeward.adapter.web";

    private Chance() {}

    static boolean isDrawnBy(JavaAccess<?> access) {
        String name = access.getName();
        return switch (access.getTargetOwner().getName()) {
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.util.Random", "java.util.SplittableRandom" -> name.equals("<init>") && takesNothing(access);
            case "java.util.concurrent.ThreadLocalRandom" -> true;
            case "java.security.SecureRandom" ->
                !KEEPER_OF_SECRETS.equals(access.getOriginOwner().getPackageName());
            case "java.util.random.RandomGenerator" -> name.equals("getDefault") || name.equals("of");
            case "java.util.UUID" -> name.equals("randomUUID");
            case "java.util.Collections" -> name.equals("shuffle") && parameters(access) == 1;
            default -> false;
        };
    }

    static boolean takesNothing(JavaAccess<?> access) {
        return parameters(access) == 0;
    }

    private static int parameters(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget target
                ? target.getRawParameterTypes().size()
                : -1;
    }
}
