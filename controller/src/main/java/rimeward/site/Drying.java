package rimeward.site;

/** Whether there is a dryer. */
public sealed interface Drying {
    record NoDryer() implements Drying {}

    /**
     * A dehumidifier. Its relay asks it to run (its demand contact); what it does then is its own affair: its humidistat,
     * float or defrost may stop it at any time.
     *
     * @param fanW power of its fan alone, W
     * @param runOnS how long the fan runs on after the demand ends, s
     * @param minimumAirC rated minimum air temperature; locked out below, °C
     * @param collectionLPerH water collected at 10 °C and 80 %, L/h
     * @param tankL water its tank holds, L; infinite for a hose to a drain
     * @param tankFloat whether and how the controller sees the tank's float
     */
    record Dryer(
            Machine machine,
            DryerKind kind,
            double fanW,
            double runOnS,
            double minimumAirC,
            double collectionLPerH,
            double tankL,
            Contact tankFloat)
            implements Drying {
        /** A dryer whose float, if it has one, is simulated or replayed. */
        public Dryer(
                Machine machine,
                DryerKind kind,
                double fanW,
                double runOnS,
                double minimumAirC,
                double collectionLPerH,
                double tankL,
                boolean hasTankFloat) {
            this(
                    machine,
                    kind,
                    fanW,
                    runOnS,
                    minimumAirC,
                    collectionLPerH,
                    tankL,
                    hasTankFloat ? new Contact.NotAttached() : new Contact.NotFitted());
        }

        public Dryer {
            Check.that(machine.role() == Role.DRYER, machine.id() + " is not a dryer");
            Check.within("fanW of the dryer", fanW, 0, machine.ratedW());
            Check.within("runOnS of the dryer", runOnS, 0, 1800);
            Check.within("minimumAirC of the dryer", minimumAirC, -10, 20);
            Check.within("collectionLPerH of the dryer", collectionLPerH, 0.01, 20);
            Check.within("tankL of the dryer", tankL, 0.5, Double.POSITIVE_INFINITY);
        }

        /** Whether the controller sees the tank's float. */
        public boolean hasTankFloat() {
            return tankFloat.isFitted();
        }
    }
}
