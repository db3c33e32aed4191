package rimeward.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import rimeward.json.JsonText;
import rimeward.record.FrameRow;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** A while of the record in equal steps: of temperatures the lowest in each, of humidity the highest, of power the mean. */
final class Columns {
    private final Site site;
    private final long startMs;
    private final long stepMs;
    private final double floorC;
    private final double[] coldestC;
    private final double[] outsideC;
    private final double[] rhPercent;
    private final double[] dewPointC;
    private final double[] heaterJ;
    private final double[] dryerJ;
    private final double[] knownS;

    Columns(Site site, long startEpochS, int stepS, int steps, double floorC) {
        this.site = site;
        this.floorC = floorC;
        startMs = startEpochS * 1000;
        stepMs = stepS * 1000L;
        coldestC = holes(steps);
        outsideC = holes(steps);
        rhPercent = holes(steps);
        dewPointC = holes(steps);
        heaterJ = new double[steps];
        dryerJ = new double[steps];
        knownS = new double[steps];
    }

    private static double[] holes(int steps) {
        double[] all = new double[steps];
        Arrays.fill(all, Double.NaN); // inside here only; outside a hole is none
        return all;
    }

    void add(FrameRow row) {
        long step = Math.floorDiv(Intervals.epochMs(row) - startMs, stepMs);
        if (step < 0 || step >= coldestC.length) {
            return;
        }
        RowView seen = new RowView(site, row);
        put(coldestC, (int) step, seen.coldestC(), StrictMath::min);
        put(outsideC, (int) step, seen.outsideC(), StrictMath::min);
        put(rhPercent, (int) step, seen.rhPercent(), StrictMath::max);
        put(dewPointC, (int) step, seen.dewPointC(), StrictMath::max);
    }

    private static void put(double[] column, int step, OptionalDouble value, DoubleBinaryOperator of) {
        value.ifPresent(
                known -> column[step] = Double.isNaN(column[step]) ? known : of.applyAsDouble(column[step], known));
    }

    /** What ran in a while, spread over the steps it lies in. */
    void add(FrameRow row, long fromMs, long toMs) {
        RowView seen = new RowView(site, row);
        double heaterW = seen.powerW(site.heaterStages());
        double dryerW = seen.powerW(site.dryerRelay());
        for (long atMs = StrictMath.max(fromMs, startMs); atMs < toMs; ) {
            int step = (int) ((atMs - startMs) / stepMs);
            if (step >= knownS.length) {
                return;
            }
            long endMs = StrictMath.min(toMs, startMs + (step + 1) * stepMs);
            double lastedS = (endMs - atMs) / 1000.0;
            heaterJ[step] += heaterW * lastedS;
            dryerJ[step] += dryerW * lastedS;
            knownS[step] += lastedS;
            atMs = endMs;
        }
    }

    Map<String, Object> map() {
        Members columns = new Members()
                .put("coldestC", shown(coldestC, 2))
                .put("outsideC", shown(outsideC, 2))
                .put("rhPercent", shown(rhPercent, 1))
                .put("dewPointC", shown(dewPointC, 2))
                .put("heaterW", shown(means(heaterJ), 0));
        if (!site.dryerRelay().equals(RelaySet.none())) {
            columns.put("dryerW", shown(means(dryerJ), 0));
        }
        double[] floor = new double[coldestC.length];
        Arrays.fill(floor, floorC);
        columns.put("floorC", shown(floor, 2));
        return new Members()
                .put("startEpochS", startMs / 1000)
                .put("stepS", stepMs / 1000)
                .put("columns", columns.map())
                .map();
    }

    private double[] means(double[] sumsJ) {
        double[] meansW = holes(sumsJ.length);
        for (int i = 0; i < meansW.length; i++) {
            meansW[i] = knownS[i] > 0 ? sumsJ[i] / knownS[i] : Double.NaN;
        }
        return meansW;
    }

    private static List<Object> shown(double[] column, int decimals) {
        List<Object> all = new ArrayList<>(column.length);
        for (double value : column) {
            all.add(Double.isNaN(value) ? JsonText.HOLE : Members.rounded(value, decimals));
        }
        return all;
    }
}
