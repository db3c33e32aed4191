package rimeward.site;

/** A kind of plant and the lowest air temperature it may meet, °C. */
public record Plant(String name, double minimumC) {
    /** No plant of a cold tunnel asks for more, °C. Own choice. */
    public static final double HIGHEST_MINIMUM_C = 20;

    public Plant {
        Check.that(!name.isBlank(), "a plant needs a name");
        Check.within("minimumC of " + name, minimumC, -10, HIGHEST_MINIMUM_C);
    }
}
