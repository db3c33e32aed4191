package rimeward.alert;

/**
 * Where one possible alert stands, so that a restart neither tells it again nor forgets to clear it.
 *
 * @param lastedS how long the opposite of {@code raised} has been seen, s
 * @param number the newest incident's; 0 before the first
 * @param acknowledged whether somebody knows of it
 * @param untoldS since it was last told, s
 * @param sumS what it adds up to be raised, s: hours of wetness, the dryer's running; 0 for others
 */
public record AlertSlot(
        AlertKind kind,
        String subject,
        boolean raised,
        double lastedS,
        long number,
        boolean acknowledged,
        double untoldS,
        double sumS) {}
