package rimeward.outlook;

/** What the course is made from. */
enum Knowledge {
    FORECAST_CORRECTED("forecast, corrected by own nights"),
    FORECAST_RAW("forecast, as it stands"),
    OWN_NIGHTS("no forecast: own evenings and nights");

    final String inWords;

    Knowledge(String inWords) {
        this.inWords = inWords;
    }
}
