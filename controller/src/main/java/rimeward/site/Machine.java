package rimeward.site;

/**
 * One relay and what hangs on it.
 *
 * @param ratedW electric power when running, W
 * @param minOnS shortest run, s
 * @param minRestS shortest rest, s
 * @param maxStartsPerH most starts in any hour
 * @param meter how what it draws is seen
 */
public record Machine(
        String id,
        Role role,
        double ratedW,
        double minOnS,
        double minRestS,
        int maxStartsPerH,
        Meter meter,
        Wiring wiring) {
    /** A machine whose meter, if it has one, is simulated or replayed. */
    public Machine(
            String id,
            Role role,
            double ratedW,
            double minOnS,
            double minRestS,
            int maxStartsPerH,
            boolean hasPowerFeedback,
            Wiring wiring) {
        this(
                id,
                role,
                ratedW,
                minOnS,
                minRestS,
                maxStartsPerH,
                hasPowerFeedback ? new Meter.NotAttached() : new Meter.NotFitted(),
                wiring);
    }

    public Machine {
        Check.id("machine id", id);
        Check.within("ratedW of " + id, ratedW, 1, 20_000);
        Check.within("minOnS of " + id, minOnS, 0, 3600);
        Check.within("minRestS of " + id, minRestS, 0, 3600);
        Check.within("maxStartsPerH of " + id, maxStartsPerH, 1, 60);
        Check.that(
                minOnS + minRestS <= 3600.0 / maxStartsPerH,
                "minOnS + minRestS of " + id + " is longer than its share of the hour (3600 s / maxStartsPerH)");
    }

    /** Whether a meter shows what it draws. */
    public boolean hasPowerFeedback() {
        return meter.isFitted();
    }

    /** Shortest time from one start to the next, s. */
    public double startSpacingS() {
        return 3600.0 / maxStartsPerH;
    }
}
