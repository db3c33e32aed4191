package rimeward.site;

/**
 * A set of machines by their place in {@link Site#machines()}: those whose relay is closed, wished, or spoken of.
 *
 * @param bits bit i stands for machine i
 */
public record RelaySet(int bits) {
    private static final RelaySet[] COMMON = common();

    /** Most machines one controller switches. */
    public static final int MOST = 16;

    private static RelaySet[] common() {
        RelaySet[] sets = new RelaySet[256];
        for (int bits = 0; bits < sets.length; bits++) {
            sets[bits] = new RelaySet(bits);
        }
        return sets;
    }

    /** The set with these bits; the common ones are shared so that a tick allocates none. */
    public static RelaySet of(int bits) {
        return bits >= 0 && bits < COMMON.length ? COMMON[bits] : new RelaySet(bits);
    }

    public static RelaySet none() {
        return COMMON[0];
    }

    public boolean has(int machine) {
        return ((bits >> machine) & 1) != 0;
    }

    public RelaySet with(int machine) {
        return of(bits | (1 << machine));
    }

    public RelaySet without(int machine) {
        return of(bits & ~(1 << machine));
    }

    public RelaySet and(RelaySet other) {
        return of(bits & other.bits);
    }

    public RelaySet or(RelaySet other) {
        return of(bits | other.bits);
    }

    public RelaySet minus(RelaySet other) {
        return of(bits & ~other.bits);
    }

    public boolean isEmpty() {
        return bits == 0;
    }

    public boolean meets(RelaySet other) {
        return (bits & other.bits) != 0;
    }

    public int size() {
        return Integer.bitCount(bits);
    }
}
