package rimeward.core.outlook;

/** What is expected of the weather, or that nothing is. */
public sealed interface Outlook {
    /** No forecast, or it is day. */
    record NoOutlook() implements Outlook {}

    /**
     * The coming night. Numbers that no night can have are refused: the heater may have nothing else to go by.
     *
     * @param night counts the nights; a new number is a new forecast
     * @param lowestOutsideC lowest outside temperature expected, °C
     * @param spreadK standard deviation of that, K
     * @param endsInS until the night is over, s
     */
    record Night(long night, double lowestOutsideC, double spreadK, double endsInS) implements Outlook {
        /** Farther than any tunnel stands from mild, °C. Own choice. */
        private static final double LEAST_C = -60;

        private static final double MOST_C = 40;
        private static final double MOST_SPREAD_K = 20;

        /** "The coming night" ends within two days, s. */
        private static final double MOST_ENDS_S = 172_800;

        /** @throws IllegalArgumentException if a number lies outside what a night can be */
        public Night {
            within("the forecast's lowest outside temperature, °C,", lowestOutsideC, LEAST_C, MOST_C);
            within("the forecast's spread, K,", spreadK, 0, MOST_SPREAD_K);
            within("the time until the forecast night ends, s,", endsInS, 0, MOST_ENDS_S);
        }

        private static void within(String what, double value, double least, double most) {
            if (!(value >= least && value <= most)) { // written so that NaN is refused too
                throw new IllegalArgumentException(
                        what + " is " + value + "; it must lie between " + least + " and " + most);
            }
        }
    }

    Outlook NONE = new NoOutlook();
}
