package rimeward.site;

/** A kind of plant and the lowest air temperature it may meet, °C. */
public record Plant(String name, double minimumC) {
    public Plant {
        Check.that(!name.isBlank(), "a plant needs a name");
        Check.within("minimumC of " + name, minimumC, -10, 20);
    }
}
