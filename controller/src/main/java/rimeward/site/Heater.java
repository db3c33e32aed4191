package rimeward.site;

import java.util.List;

/**
 * The electric heater: one or more stages, each on its own relay, behind its own thermostat and cut-out.
 *
 * @param stages first to close first
 * @param deadTimeS from closing a relay until the sensors begin to see it, s
 */
public record Heater(List<Machine> stages, double deadTimeS) {
    public Heater {
        stages = List.copyOf(stages);
        Check.that(!stages.isEmpty(), "a heater needs at least one stage: without it nothing can keep the floor");
        for (Machine stage : stages) {
            Check.that(stage.role() == Role.HEATER_STAGE, stage.id() + " is not a heater stage");
        }
        Check.within("deadTimeS of the heater", deadTimeS, 0, 1800);
    }

    public double ratedW() {
        double sumW = 0;
        for (Machine stage : stages) {
            sumW += stage.ratedW();
        }
        return sumW;
    }
}
