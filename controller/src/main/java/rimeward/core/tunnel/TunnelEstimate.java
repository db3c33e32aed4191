package rimeward.core.tunnel;

import rimeward.site.Site;
import rimeward.site.Tunnel;

/**
 * What is known of how this tunnel keeps and loses heat and damp, at night. Air and mass are two nodes:
 *
 * <pre>
 * airCapacity  dTair/dt  = heatLoss (Toutside − Tair) + massCoupling (Tmass − Tair) + heaterYield Pheater + dryerYield Pdryer
 * massCapacity dTmass/dt = massCoupling (Tair − Tmass) + ground
 * airMass      dw/dt     = wetting (wsat(Tmass) − w) + airExchange (woutside − w) − dryer's collection   (w: humidity ratio, kg/kg)
 * </pre>
 *
 * @param heatLossWPerK to outside, W/K
 * @param massCouplingWPerK between air and mass, W/K
 * @param airCapacityJPerK what moves with the air, J/K
 * @param massCapacityJPerK pots, slab and soil as far as a night reaches, J/K
 * @param groundW into the mass from below, less what evaporation takes from it, W
 * @param heaterYield heat for each watt that the heater draws, W/W
 * @param dryerYield the same of the dryer; with the heat of the water it collects it is more than 1
 * @param airExchangeKgPerS dry air that is exchanged with outside, kg/s
 * @param wettingKgPerS how eagerly wet surfaces give off vapour, kg/s for each kg/kg of deficit
 * @param nights learned from so many; 0 where all is assumed
 */
public record TunnelEstimate(
        Figure heatLossWPerK,
        Figure massCouplingWPerK,
        Figure airCapacityJPerK,
        Figure massCapacityJPerK,
        Figure groundW,
        Figure heaterYield,
        Figure dryerYield,
        Figure airExchangeKgPerS,
        Figure wettingKgPerS,
        int nights) {
    /** How far the settings' numbers may be off, as a share. Own choice. */
    private static final double ASSUMED_ERROR = 0.25;

    /** Share of the heat loss that goes with exchanged air, and vapour conductance for each m² of floor. Own choices, rough. */
    private static final double EXCHANGE_SHARE = 0.35;

    private static final double WETTING_KG_PER_S_M2 = 0.0012;
    private static final double AIR_J_PER_KG_K = 1006;
    private static final double SORPTION_YIELD = 1.3;

    /** What the settings say, until the tunnel has been learned. */
    public static TunnelEstimate assumed(Site site) {
        Tunnel tunnel = site.tunnel();
        double exchangeKgPerS = EXCHANGE_SHARE * tunnel.heatLossWPerK() / AIR_J_PER_KG_K;
        return new TunnelEstimate(
                Figure.assumed(tunnel.heatLossWPerK(), ASSUMED_ERROR),
                Figure.assumed(tunnel.massCouplingWPerK(), ASSUMED_ERROR),
                Figure.assumed(tunnel.airCapacityJPerK(), ASSUMED_ERROR),
                Figure.assumed(tunnel.massCapacityJPerK(), ASSUMED_ERROR),
                new Figure(0, 5 * tunnel.floorAreaM2()),
                new Figure(1, 0.1),
                new Figure(SORPTION_YIELD, 0.2),
                Figure.assumed(exchangeKgPerS, 0.5),
                Figure.assumed(WETTING_KG_PER_S_M2 * tunnel.floorAreaM2(), 0.5),
                0);
    }

    /** Whether it was learned, and not only assumed. */
    public boolean isLearned() {
        return nights > 0;
    }
}
