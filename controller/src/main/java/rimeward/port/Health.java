package rimeward.port;

/** How the computer itself is, as it was found to be when last somebody looked. Never waits and never throws. */
public interface Health {
    /** Whether the supply's voltage was too low of late. */
    boolean isVoltageLow();

    /** Whether the disk that the record is on has little room left. */
    boolean isDiskNearlyFull();

    /** Of a computer that nothing ails. */
    static Health sound() {
        return new Health() {
            @Override
            public boolean isVoltageLow() {
                return false;
            }

            @Override
            public boolean isDiskNearlyFull() {
                return false;
            }
        };
    }
}
