package rimeward.sim.bound;

/**
 * Sequential linear programming: lays the programme about a path, solves it, lets the simulator answer the schedule found, and does so
 * again about that answer, until answer and programme agree (Griffith &amp; Stewart, Management Science 7, 1961; steps of dryer and fan
 * bounded as in Palacios-Gomez, Lasdon &amp; Engquist, Management Science 28, 1982). For one thread.
 */
final class Search {
    /** Rounds at most. Own choice: four are usual. */
    private static final int MOST_ROUNDS = 10;

    /** They agree when the bench is nowhere deeper below what is to be kept, K, and the electricity no longer moves by more, share. */
    private static final double SHORT_K = 0.05;

    private static final double STILL_SHARE = 0.001;

    /** Dryer and fan first move at most this far, then half as far each time. */
    private static final double FIRST_STEP = 1;

    private static final double NARROWING = 0.6;

    /** What is to be as small as possible. */
    enum Goal {
        ELECTRICITY,
        MONEY
    }

    private final Probe probe;
    private final Course course;
    private final Box box;
    private final Goal goal;
    private final double[] perKWh;

    Search(Probe probe, Course course, Box box, Goal goal) {
        this.probe = probe;
        this.course = course;
        this.box = box;
        this.goal = goal;
        perKWh = new double[course.quarters];
        for (int k = 0; k < perKWh.length; k++) {
            perKWh[k] = goal == Goal.MONEY ? course.pricePerKWh(k) : 1;
        }
    }

    /** From a schedule to the best about it. */
    Path from(Schedule start, Kept kept) {
        Path path = Path.withTangents(probe, course, box.clipped(start));
        double step = FIRST_STEP;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Box near = box.near(path.schedule(), step);
            Schedule next = new Programme(perKWh, kept, path, near).solve();
            Path answer = Path.withTangents(probe, course, next);
            double moved = Math.abs(worth(answer) - worth(path)) / Math.max(worth(answer), 1);
            path = answer;
            if (moved < STILL_SHARE && Shortness.ofK(path, kept) < SHORT_K) {
                break;
            }
            step *= NARROWING;
        }
        return path;
    }

    private double worth(Path path) {
        return goal == Goal.MONEY ? path.cost(course) : path.kWh();
    }
}
