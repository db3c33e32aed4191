package rimeward.sim.check;

/** What must always be true of a tunnel under control, as far as one replay can show it. */
public enum Property {
    P1_FLOOR("floor", "with enough heat in hand no bench goes below the floor"),
    P2_NO_GAP("no gap", "near the floor, with heat in hand, somebody gives it"),
    P3_CIRCUIT("circuit", "closed relays never add up to more than the circuit carries"),
    P4_REST("rest", "every machine gets its shortest runs and rests"),
    P5_HOT("hot", "no heat source is asked for above the hot limit"),
    P6_FAIL_WARM("fail warm", "after a failure that can be noticed, heat is asked for at once"),
    P7_QUIET("quiet", "no relay starts more often than its machine bears"),
    P8_EXPLAIN("explain", "every switch has a reason whose numbers agree with what was measured");

    private final String title;
    private final String says;

    Property(String title, String says) {
        this.title = title;
        this.says = says;
    }

    /** Short name: "P2". */
    public String code() {
        return name().substring(0, 2);
    }

    /** One or two words for tables. */
    public String title() {
        return title;
    }

    /** One sentence, without a full stop. */
    public String says() {
        return says;
    }
}
