package rimeward.site;

/**
 * The one circuit everything hangs on.
 *
 * @param voltageV mains voltage, V
 * @param fuseA rating of its fuse or breaker, A
 * @param continuousFactor share of the rating a load of hours may use (0.8 by the NEC; from memory)
 * @param otherLoadW what else hangs on it always, W
 * @param staggerS least time between two starts after a power cut, s
 */
public record Circuit(double voltageV, double fuseA, double continuousFactor, double otherLoadW, double staggerS) {
    public Circuit {
        Check.within("voltageV", voltageV, 100, 480);
        Check.within("fuseA", fuseA, 1, 125);
        Check.within("continuousFactor", continuousFactor, 0.5, 1);
        Check.within("otherLoadW", otherLoadW, 0, 20_000);
        Check.within("staggerS", staggerS, 0, 300);
    }

    /** What the machines together may draw, W. */
    public double limitW() {
        return voltageV * fuseA * continuousFactor - otherLoadW;
    }
}
