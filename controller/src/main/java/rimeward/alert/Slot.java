package rimeward.alert;

/**
 * One thing that may be wrong with one subject: raised after it has lasted, cleared after it has been gone for a while, so
 * that it does not flap. Belongs to the board, and so to the loop's thread.
 */
final class Slot {
    final AlertKind kind;
    final String subject;
    private final double raiseAfterS;
    private final double clearAfterS;
    private double lastedS;
    private boolean raised;

    Slot(AlertKind kind, String subject, double raiseAfterS, double clearAfterS) {
        this.kind = kind;
        this.subject = subject;
        this.raiseAfterS = raiseAfterS;
        this.clearAfterS = clearAfterS;
    }

    /** True when it was raised or cleared just now; {@link #isRaised} tells which. */
    boolean changes(boolean present, double dtS) {
        if (present == raised) {
            lastedS = 0;
            return false;
        }
        lastedS += dtS;
        if (lastedS < (raised ? clearAfterS : raiseAfterS)) {
            return false;
        }
        raised = present;
        lastedS = 0;
        return true;
    }

    /** As it stood before a restart. */
    void resume(AlertSlot saved) {
        raised = saved.raised();
        lastedS = saved.lastedS();
    }

    /** Whether there is anything to remember. */
    boolean isStirred() {
        return raised || lastedS > 0;
    }

    AlertSlot saved() {
        return new AlertSlot(kind, subject, raised, lastedS);
    }

    boolean isRaised() {
        return raised;
    }
}
