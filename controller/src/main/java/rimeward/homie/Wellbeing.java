package rimeward.homie;

/**
 * How the service itself is.
 *
 * @param recordFails whether nothing can be written into the record at present
 * @param tickLate whether the newest decision came more than a beat late
 */
public record Wellbeing(boolean recordFails, boolean tickLate) {
    public static final Wellbeing WELL = new Wellbeing(false, false);
}
