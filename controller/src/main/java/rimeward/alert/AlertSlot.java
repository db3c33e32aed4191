package rimeward.alert;

/**
 * Where one possible alert stands, so that a restart neither tells it again nor forgets to clear it.
 *
 * @param lastedS how long the opposite of {@code raised} has been seen, s
 */
public record AlertSlot(AlertKind kind, String subject, boolean raised, double lastedS) {}
