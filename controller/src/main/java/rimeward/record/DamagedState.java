package rimeward.record;

/** A saved state that cannot be used. Its message says what is wrong; control then starts fresh. */
public final class DamagedState extends RuntimeException {
    private static final long serialVersionUID = 1;

    DamagedState(String what) {
        super("The saved state cannot be used: " + what + ".");
    }
}
