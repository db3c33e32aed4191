package rimeward.sizing;

/** What is known of the weather to come. */
public sealed interface Winter {
    /** No weather file was given: nothing is said of kilowatt-hours and money. */
    record Unknown() implements Winter {}

    /**
     * A weather file's.
     *
     * @param file its name, for people
     */
    record Known(String file, Weather weather, Season season) implements Winter {}

    /**
     * The nights of the tunnel's own record.
     *
     * @param kWh that its heaters took in them
     * @param money what that cost
     */
    record Recorded(int nights, double kWh, double money) implements Winter {}
}
