package rimeward.map;

import com.tngtech.archunit.core.domain.JavaAccess;
import java.util.Set;

/** Calls that read the machine's clock. Time comes in through the ticker, so that a replay is the same program. */
final class WallClock {

    private static final Set<String> OF_SYSTEM = Set.of("currentTimeMillis", "nanoTime");

    private WallClock() {}

    static boolean isReadBy(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getName();
        return switch (owner) {
            case "java.lang.System" -> OF_SYSTEM.contains(name);
            case "java.time.Clock" -> name.startsWith("system") || name.startsWith("tick");
            case "java.util.Date" -> name.equals("<init>") && Chance.takesNothing(access);
            case "java.util.Calendar", "java.util.GregorianCalendar" -> true;
            default -> owner.startsWith("java.time.") && name.equals("now");
        };
    }
}
