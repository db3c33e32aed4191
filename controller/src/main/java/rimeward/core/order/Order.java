package rimeward.core.order;

import rimeward.core.outlook.Outlook;

/** What may be asked of control from outside its loop: by the grower from afar, and by what learns off the tick. Numbers that no tunnel could have are refused here; the site's own limits later. */
public sealed interface Order {
    /** The longest name that is listened to, letters. Own choice. */
    int MOST_LETTERS = 128;

    /**
     * The grower has seen an alert and need not be reminded of it.
     *
     * @param alertId as the alert gives it
     */
    record Acknowledge(String alertId) implements Order {
        /** @throws IllegalArgumentException if no alert can have that id */
        public Acknowledge {
            named("the alert's id", alertId);
        }
    }

    /**
     * Hold another floor than the one in the settings, until the next order or other settings.
     *
     * @param floorC the lowest temperature that the plants are to meet, °C
     */
    record SetFloor(double floorC) implements Order {
        /** Colder and hotter than any tunnel is held, °C. Own choice. */
        public static final double LEAST_C = -20;

        public static final double MOST_C = 40;

        /** @throws IllegalArgumentException if the floor is none that a tunnel can have */
        public SetFloor {
            within("the floor, °C,", floorC, LEAST_C, MOST_C);
        }
    }

    /** Ask for the forecast anew, and plan the night by it. */
    record PlanNow() implements Order {}

    /**
     * Plan by this forecast.
     *
     * @param outlook as of the moment at which the order is taken
     */
    record HandForecast(Outlook outlook) implements Order {}

    /**
     * Take a machine out of use for service; it comes back by itself.
     *
     * @param machineId as the settings call it
     * @param forS from now on, s; 0 brings it back at once
     */
    record StandDown(String machineId, double forS) implements Order {
        /** Four hours: long enough to mend a machine by day, short enough that none is forgotten over a night, s. Own choice. */
        public static final double LONGEST_S = 14_400;

        /** @throws IllegalArgumentException if the time is not between 0 and {@link #LONGEST_S}, or no machine can be called so */
        public StandDown {
            named("the machine's name", machineId);
            within("the time to stand down, s,", forS, 0, LONGEST_S);
        }
    }

    /** Go by the tunnel as its nights taught it. No grower asks for this: it is handed on by what learns. */
    record KnowTunnel(KnownTunnel.Learned tunnel) implements Order {}

    /** Letters, digits and '-', as all names in the settings are; what is written here comes from far away, and goes into logs. */
    private static void named(String what, String name) {
        if (name.length() > MOST_LETTERS || !name.matches("[a-z0-9-]+")) {
            throw new IllegalArgumentException(
                    what + " must be 1 to " + MOST_LETTERS + " lower-case letters, digits and '-' only");
        }
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) { // written so that NaN is refused too
            throw new IllegalArgumentException(
                    what + " is " + value + "; it must lie between " + least + " and " + most);
        }
    }
}
