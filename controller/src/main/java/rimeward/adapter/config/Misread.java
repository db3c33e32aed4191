package rimeward.adapter.config;

/** A value that a {@link Kind} does not accept; carries the second half of a {@link Fault}. */
public final class Misread extends Exception {
    private static final long serialVersionUID = 1;

    private final String problem;
    private final String remedy;

    public Misread(String problem, String remedy) {
        super(problem + "; " + remedy, null, false, false);
        this.problem = problem;
        this.remedy = remedy;
    }

    String problem() {
        return problem;
    }

    String remedy() {
        return remedy;
    }
}
