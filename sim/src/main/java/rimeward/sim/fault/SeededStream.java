package rimeward.sim.fault;

/**
 * Chance that can be repeated: one stream for each seed and name, the same on any machine; for one thread. Streams are told apart by
 * name so that a draw more in one place does not shift the draws of another.
 *
 * <p>Source: SplitMix64, Steele, Lea &amp; Flood, OOPSLA 2014; the names are hashed by FNV-1a.
 */
public final class SeededStream {
    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final double TO_UNIT = 0x1.0p-53;
    private static final double FOUR_SLICES_TO_SPREAD =
            1.7320508075688772 / 65_536; // √3: four uniforms of spread 1/√12 each

    private long state;

    private SeededStream(long state) {
        this.state = state;
    }

    public static SeededStream named(long seed, String name) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < name.length(); i++) {
            hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
        }
        return new SeededStream(mix(seed) ^ hash);
    }

    public long nextLong() {
        state += GOLDEN_GAMMA;
        return mix(state);
    }

    private static long mix(long z) {
        long a = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        long b = (a ^ (a >>> 27)) * 0x94d049bb133111ebL;
        return b ^ (b >>> 31);
    }

    /** Evenly spread from 0 up to, not with, 1. */
    public double nextDouble() {
        return (nextLong() >>> 11) * TO_UNIT;
    }

    /** Evenly spread from {@code least} up to {@code most}. */
    public double between(double least, double most) {
        return least + (most - least) * nextDouble();
    }

    /** One of 0…{@code bound} − 1. */
    public int below(int bound) {
        return (int) (nextDouble() * bound);
    }

    /** Bell-shaped about 0 with standard deviation 1 and never beyond ±3.5: the sum of four even spreads, from one draw. */
    public double bell() {
        long bits = nextLong();
        long sum = (bits & 0xffff) + (bits >>> 16 & 0xffff) + (bits >>> 32 & 0xffff) + (bits >>> 48);
        return (sum - 131_070) * FOUR_SLICES_TO_SPREAD;
    }
}
