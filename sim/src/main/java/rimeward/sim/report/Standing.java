package rimeward.sim.report;

import java.util.List;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;

/** How a law did in one measure beside the others, judged by the numbers as they are shown. */
enum Standing {
    BEST,
    WORST,
    NEITHER;

    static Standing of(Measure measure, RunResult one, List<RunResult> all) {
        List<RunResult> rivals =
                all.stream().filter(each -> competes(measure, each)).toList();
        if (measure.better() == Measure.Better.NEITHER || !rivals.contains(one)) {
            return NEITHER;
        }
        double own = shown(measure, one);
        double least =
                rivals.stream().mapToDouble(each -> shown(measure, each)).min().orElse(own);
        double most =
                rivals.stream().mapToDouble(each -> shown(measure, each)).max().orElse(own);
        if (least == most || (own != least && own != most)) {
            return NEITHER;
        }
        boolean higherIsBetter = measure.better() == Measure.Better.HIGHER;
        return (own == most) == higherIsBetter ? BEST : WORST;
    }

    private static boolean competes(Measure measure, RunResult result) {
        return measure.better() != Measure.Better.LOWER_IF_SAFE || keptPlantsSafe(result.summary());
    }

    static boolean keptPlantsSafe(Summary summary) {
        return summary.belowFloorS() == 0;
    }

    private static double shown(Measure measure, RunResult result) {
        return Double.parseDouble(measure.text(result).replace('\u2212', '-'));
    }
}
