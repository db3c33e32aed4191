package rimeward.core.outlook;

/** What is expected of the weather, or that nothing is. */
public sealed interface Outlook {
    /** No forecast, or it is day. */
    record NoOutlook() implements Outlook {}

    /**
     * The coming night.
     *
     * @param night counts the nights; a new number is a new forecast
     * @param lowestOutsideC lowest outside temperature expected, °C
     * @param spreadK standard deviation of that, K
     * @param endsInS until the night is over, s
     */
    record Night(long night, double lowestOutsideC, double spreadK, double endsInS) implements Outlook {}

    Outlook NONE = new NoOutlook();
}
