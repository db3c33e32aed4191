package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Which machines give heat tonight, in the site's order.
 *
 * @param stages heater stages in use that the circuit carries, first to close first
 * @param heaterW what these draw together, W
 * @param drying the dryer, where there is one in use
 * @param dryerW what it draws, W; 0 without one
 * @param limitW what the circuit carries, W
 */
record Machinery(
        List<Integer> stages, List<Double> stagesW, double heaterW, Drying drying, double dryerW, double limitW) {
    static Machinery of(Site site, RelaySet out) {
        List<Integer> stages = new ArrayList<>();
        List<Double> stagesW = new ArrayList<>();
        double limitW = site.circuit().limitW();
        double heaterW = 0;
        for (int i = 0; i < site.heater().stages().size(); i++) {
            Machine stage = site.heater().stages().get(i);
            if (!out.has(i) && heaterW + stage.ratedW() <= limitW) { // the guard sheds the last stages first
                stages.add(i);
                stagesW.add(stage.ratedW());
                heaterW += stage.ratedW();
            }
        }
        boolean dries = site.drying() instanceof Drying.Dryer && !out.meets(site.dryerRelay());
        return new Machinery(
                List.copyOf(stages),
                List.copyOf(stagesW),
                heaterW,
                dries ? site.drying() : new Drying.NoDryer(),
                dries ? site.ratedW(site.dryerRelay()) : 0,
                limitW);
    }

    /** Share of the time that a stage runs when the heater gives this much on average. */
    double share(int stage, double averageW) {
        double beforeW = 0;
        for (int i = 0; i < stage; i++) {
            beforeW += stagesW.get(i);
        }
        return StrictMath.max(0, StrictMath.min(1, (averageW - beforeW) / stagesW.get(stage)));
    }

    /** Whether the circuit carries the dryer beside the stages that this takes; in the cold it is shed first. */
    boolean carriesDryerBeside(double averageW) {
        double closedW = 0;
        for (int i = 0; i < stages.size(); i++) {
            closedW += share(i, averageW) > 0 ? stagesW.get(i) : 0;
        }
        return closedW + dryerW <= limitW;
    }
}
