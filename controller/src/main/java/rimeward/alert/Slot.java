package rimeward.alert;

import java.util.Optional;

/**
 * One thing that may be wrong with one subject: raised after it has lasted, told again while it stands, cleared after it has been
 * gone for a while, so that it does not flap. Belongs to the board, and so to the loop's thread.
 */
final class Slot {
    /** For so long a thing that happened in a moment is shown, s. Own choice: seen at breakfast. */
    static final double EVENT_STANDS_S = 43_200;

    final AlertKind kind;
    final String subject;
    private final double raiseAfterS;
    private final double clearAfterS;
    private double lastedS;
    private boolean raised;
    private long number;
    private boolean acknowledged;
    private double untoldS;
    private double sumS;

    Slot(AlertKind kind, String subject, double raiseAfterS, double clearAfterS) {
        this.kind = kind;
        this.subject = subject;
        this.raiseAfterS = raiseAfterS;
        this.clearAfterS = clearAfterS;
    }

    /** For what happens in a moment: see {@link #happened}. */
    static Slot event(AlertKind kind, String subject) {
        return new Slot(kind, subject, 0, EVENT_STANDS_S);
    }

    /**
     * What became of it just now, mostly nothing.
     *
     * @param epochS time of day, from which an incident's number is made: it rises, even where the clock does not
     */
    Optional<Alert.Change> look(boolean present, double dtS, long epochS) {
        untoldS += raised ? dtS : 0;
        if (present == raised) {
            lastedS = 0;
            return repeats();
        }
        lastedS += dtS;
        if (lastedS < (raised ? clearAfterS : raiseAfterS)) {
            return repeats();
        }
        if (present) {
            happened(epochS);
            return Optional.of(Alert.Change.RAISED);
        }
        end();
        return Optional.of(Alert.Change.CLEARED);
    }

    /** A new incident, whatever stood before. */
    void happened(long epochS) {
        raised = true;
        acknowledged = false;
        lastedS = 0;
        untoldS = 0;
        number = Math.max(number + 1, epochS);
    }

    void end() {
        raised = false;
        acknowledged = false;
        lastedS = 0;
        untoldS = 0;
    }

    private Optional<Alert.Change> repeats() {
        if (!raised || isEvent()) {
            return Optional.empty();
        }
        var everyS = Pace.everyS(kind.severity(), acknowledged);
        if (everyS.isEmpty() || untoldS < everyS.getAsDouble()) {
            return Optional.empty();
        }
        untoldS = 0;
        return Optional.of(Alert.Change.REPEATED);
    }

    boolean isEvent() {
        return clearAfterS == EVENT_STANDS_S;
    }

    /** Somebody knows of it; false where that was known. */
    boolean acknowledge() {
        boolean news = raised && !acknowledged;
        acknowledged = raised;
        return news;
    }

    /** What is added up for it, s; kept over a restart. */
    void sum(double nowS) {
        sumS = nowS;
    }

    double sumS() {
        return sumS;
    }

    /** Of the newest incident. */
    String id() {
        return Alert.id(kind, subject, number);
    }

    /** As it stood before a restart. */
    void resume(AlertSlot saved) {
        raised = saved.raised();
        lastedS = saved.lastedS();
        number = saved.number();
        acknowledged = saved.acknowledged();
        untoldS = saved.untoldS();
        sumS = saved.sumS();
    }

    /** Whether there is anything to remember. */
    boolean isStirred() {
        return raised || lastedS > 0 || number > 0 || sumS > 0;
    }

    AlertSlot saved() {
        return new AlertSlot(kind, subject, raised, lastedS, number, acknowledged, untoldS, sumS);
    }

    /** Nothing stands and nothing begins: as long as its thing is absent, there is nothing to look at. */
    boolean isQuiet() {
        return !raised && lastedS == 0;
    }

    boolean isRaised() {
        return raised;
    }
}
