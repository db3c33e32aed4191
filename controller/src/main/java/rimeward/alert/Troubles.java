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
        public boolean hasClockJumped() {
            return false;
        }

        @Override
        public boolean isTickLate() {
            return false;
        }
    };

    boolean isFailing(Door door);

    boolean hasClockJumped();

    boolean isTickLate();
}
