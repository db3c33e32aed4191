package rimeward.sim.bound;

import java.util.Arrays;
import rimeward.air.Saturation;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.Trace;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Drying;
import rimeward.site.Site;

/** Reads from a trace what a law kept, by the quarter of an hour. */
final class KeptReader {
    private final Trace trace;
    private final int stages;
    private final int dryer;
    private final int fan;
    private final double runOnW;
    private final double[] lowestC;
    private final double[] endC;
    private final double[] rhPercent;
    private final Schedule schedule;

    private KeptReader(Scenario scenario, Trace trace, int quarters) {
        this.trace = trace;
        Site site = scenario.site();
        stages = site.heater().stages().size();
        dryer = site.dryerRelay().isEmpty() ? -1 : stages;
        fan = site.ventRelay().isEmpty() ? -1 : site.machines().size() - 1;
        runOnW = site.drying() instanceof Drying.Dryer plate ? plate.fanW() : 0;
        lowestC = new double[quarters];
        Arrays.fill(lowestC, Double.POSITIVE_INFINITY);
        endC = new double[quarters];
        rhPercent = new double[quarters];
        schedule = Schedule.idle(quarters);
    }

    static Kept read(Scenario scenario, Trace trace, int quarters) {
        KeptReader reader = new KeptReader(scenario, trace, quarters);
        long startS = scenario.startEpochS();
        for (int row = 0; row < trace.rows(); row++) {
            long fromS = trace.epochS(row) - startS;
            long toS = row + 1 < trace.rows() ? trace.epochS(row + 1) - startS : scenario.lengthS();
            reader.spread(row, fromS, toS);
        }
        return new Kept(
                scenario.site().floorC(),
                scenario.site().targets().rhPercent(),
                reader.lowestC,
                reader.endC,
                reader.rhPercent,
                reader.schedule);
    }

    /** A row counts for the time until the next one. */
    private void spread(int row, long fromS, long toS) {
        double benchC = trace.at(Quantity.COLDEST_BENCH_C, row);
        double vapourPa =
                trace.at(Quantity.RH_PERCENT, row) / 100 * Saturation.overWaterPa(trace.at(Quantity.AIR_C, row));
        double percent = 100 * vapourPa / Saturation.overWaterPa(benchC);
        int before = (int) (fromS / Course.QUARTER_S) - 1;
        if (fromS % Course.QUARTER_S == 0 && before >= 0 && before < lowestC.length) {
            endC[before] = benchC;
            lowestC[before] = Math.min(lowestC[before], benchC);
        }
        for (long atS = fromS; atS < toS; ) {
            int quarter = (int) (atS / Course.QUARTER_S);
            long untilS = Math.min(toS, (quarter + 1L) * Course.QUARTER_S);
            if (quarter < lowestC.length) {
                add(quarter, row, (double) (untilS - atS) / Course.QUARTER_S, benchC, percent);
            }
            atS = untilS;
        }
    }

    private void add(int quarter, int row, double share, double benchC, double percent) {
        lowestC[quarter] = Math.min(lowestC[quarter], benchC);
        endC[quarter] = benchC;
        rhPercent[quarter] += share * percent;
        for (int i = 0; i < stages; i++) {
            schedule.heaterW()[quarter] += share * trace.powerW(i, row);
        }
        if (dryer >= 0 && trace.powerW(dryer, row) > 1.5 * runOnW) {
            schedule.dryerShare()[quarter] += share;
        }
        if (fan >= 0 && trace.powerW(fan, row) > 0) {
            schedule.fanShare()[quarter] += share;
        }
    }
}
