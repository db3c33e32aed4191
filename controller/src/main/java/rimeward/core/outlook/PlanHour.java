package rimeward.core.outlook;

import java.util.List;
import rimeward.core.tunnel.Figure;

/**
 * One hour of a plan, by the local clock; the first and the last may be shorter.
 *
 * @param fromEpochS when it begins, s since 1970 UTC
 * @param lengthS s
 * @param outsideC mean outside temperature, °C
 * @param freeFloatC lowest that the coldest bench would have with every machine off from now on, °C
 * @param benchC lowest that the coldest bench is expected to have, °C
 * @param rhPercent mean relative humidity at the coldest bench, %
 * @param holder who carries the warm duty
 * @param shares part of the time that each machine runs, in the site's order, 0 to 1
 * @param kWhEach what each machine takes, in the site's order, kWh
 * @param kWh together
 * @param cost by the tariff, in its currency
 * @param litres water that the dryer collects, L
 * @param spareW least heat to spare beyond what the floor needs, W; negative where it cannot be held
 * @param chanceCold chance that the floor cannot be held, 0 to 1
 */
public record PlanHour(
        long fromEpochS,
        double lengthS,
        Figure outsideC,
        Figure freeFloatC,
        Figure benchC,
        Figure rhPercent,
        WarmHolder holder,
        List<Double> shares,
        List<Double> kWhEach,
        Figure kWh,
        Figure cost,
        Figure litres,
        Figure spareW,
        double chanceCold) {
    public PlanHour {
        shares = List.copyOf(shares);
        kWhEach = List.copyOf(kWhEach);
    }
}
