package rimeward.app;

/** What the adapters write to the log of their own accord. */
final class HardwareLog {
    private HardwareLog() {}

    /** For commands that tell a person the same in a table; before the first use of an adapter. */
    static void off() {
        System.setProperty("org.slf4j.simpleLogger.log.rimeward.adapter.pi", "off");
    }
}
