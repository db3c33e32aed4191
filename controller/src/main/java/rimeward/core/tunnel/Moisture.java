package rimeward.core.tunnel;

/** What the nights teach of a tunnel's damp. */
public sealed interface Moisture {
    /**
     * Enough.
     *
     * @param airExchangeKgPerS as {@link TunnelEstimate} has it
     * @param wettingKgPerS the same
     * @param ratioError standard error of the logarithm of how one stands to the other, which is what makes the air damp: it is known
     *     better than either, because only a dryer tells how much water moves
     */
    record Learned(Figure airExchangeKgPerS, Figure wettingKgPerS, double ratioError) implements Moisture {
        /** The tunnel with these numbers for its damp. */
        public TunnelEstimate in(TunnelEstimate estimate) {
            return new TunnelEstimate(
                    estimate.heatLossWPerK(),
                    estimate.massCouplingWPerK(),
                    estimate.airCapacityJPerK(),
                    estimate.massCapacityJPerK(),
                    estimate.groundW(),
                    estimate.heaterYield(),
                    estimate.dryerYield(),
                    airExchangeKgPerS,
                    wettingKgPerS,
                    estimate.nights());
        }
    }

    /** They do not tell: the settings count. */
    record Unclear(String why) implements Moisture {}
}
