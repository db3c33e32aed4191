package rimeward.sizing;

/**
 * What a weather file told.
 *
 * @param form how the course came about
 * @param unmeasured rows whose temperature was left empty or marked as missing
 * @param impossible rows whose temperature cannot be true, and was not believed
 */
public record Weather(AirCourse course, Form form, int unmeasured, int impossible) {
    /** What kind of file it was. */
    public enum Form {
        READINGS("readings as they stand in the file"),
        DAILY("daily extremes, joined by half waves of a cosine: lowest at 07:00, highest at 15:00 (own choice)"),
        EPW("dry-bulb temperatures of a typical year (EPW)");

        private final String words;

        Form(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
