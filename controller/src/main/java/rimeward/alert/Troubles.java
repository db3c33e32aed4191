package rimeward.alert;

/** What is wrong with the controller itself at one tick. */
public interface Troubles {
    /** None at all: in a replay the doors are sound. */
    Troubles NONE = new Troubles() {
        @Override
        public boolean isFailing(Door door) {
            return false;
        }

        @Override
        public boolean isAnyFailing() {
            return false;
        }

        @Override
        public int timesRecordSetAside() {
            return 0;
        }

        @Override
        public boolean hasClockJumped() {
            return false;
        }

        @Override
        public boolean isTickLate() {
            return false;
        }

        @Override
        public boolean isDiskNearlyFull() {
            return false;
        }

        @Override
        public boolean isVoltageLow() {
            return false;
        }
    };

    boolean isFailing(Door door);

    /** Whether any is: asked at every tick, and nearly always false. */
    boolean isAnyFailing();

    /** How often since the start the record was found damaged, and begun anew. */
    int timesRecordSetAside();

    boolean hasClockJumped();

    boolean isTickLate();

    /** Whether the disk that the record is on has little room left. */
    boolean isDiskNearlyFull();

    /** Whether the computer's own power supply is too weak. */
    boolean isVoltageLow();
}
