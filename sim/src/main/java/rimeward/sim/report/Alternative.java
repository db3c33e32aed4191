package rimeward.sim.report;

import rimeward.report.Say;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;
import rimeward.site.Site;
import rimeward.strip.Span;
import rimeward.strip.Stamp;

/** What the panels show, in words, for those who do not see them. */
final class Alternative {
    private Alternative() {}

    static String temperature(Site site, RunResult result, TraceSeries outside, Span span) {
        Summary summary = result.summary();
        long atS = summary.lowestEpochS();
        return "Temperatures. Outside from " + range(outside, 1, "°C") + ". Coldest bench lowest "
                + Say.degrees(summary.lowestBenchC()) + ", " + Stamp.day(atS, span.offset()) + " "
                + Stamp.clock(atS, span.offset()) + "; floor " + Say.degrees(site.floorC()) + ", below it for "
                + Say.duration(summary.belowFloorS()) + ".";
    }

    static String humidity(Site site, RunResult result, TraceSeries rh) {
        return "Relative humidity from " + range(rh, 0, "%") + ". Above the target of "
                + Say.number(site.targets().rhPercent(), 0) + " % for "
                + Say.duration(result.summary().aboveRhTargetS()) + ".";
    }

    static String dewPoint(RunResult result) {
        TraceSeries dew = new TraceSeries(result.trace(), Quantity.DEW_POINT_C);
        return "Dew point from " + range(dew, 1, "°C") + ". A bench at or below it for "
                + Say.duration(result.summary().benchAtDewS()) + ", the film for "
                + Say.duration(result.summary().filmAtDewS()) + ".";
    }

    static String rival(RunResult result, Site site) {
        return "Coldest bench under " + result.law().name() + ": lowest "
                + Say.degrees(result.summary().lowestBenchC()) + ", below the floor of " + Say.degrees(site.floorC())
                + " for " + Say.duration(result.summary().belowFloorS()) + ".";
    }

    private static String range(TraceSeries series, int decimals, String unit) {
        return Say.number(series.least(), decimals) + " to " + Say.number(series.most(), decimals) + " " + unit;
    }
}
