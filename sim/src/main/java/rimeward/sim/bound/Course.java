package rimeward.sim.bound;

import java.util.List;
import rimeward.sim.fault.FaultClock;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.physics.Openings;
import rimeward.sim.physics.Outside;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.StandDownAt;
import rimeward.sim.weather.WeatherCursor;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What comes whatever a law does, by the quarter of an hour: weather, openings, prices, and which machines could run. */
final class Course {
    static final int QUARTER_S = 900;
    static final double QUARTER_H = 0.25;

    /** As the simulator holds the weather constant, s. */
    static final int STEP_S = 10;

    static final int STEPS = QUARTER_S / STEP_S;

    private static final int FIELDS = 8;
    private static final int DOOR = 6;
    private static final int TORN_M2 = 7;
    private static final long MINUTE_S = 60;
    private static final long MINUTES_A_DAY = 1440;

    private final Scenario scenario;
    private final List<Machine> stages;
    private final float[][] weather;
    private final float[][] liveW;
    private final float[][] weldedW;
    private final boolean[] dryerMay;
    private final boolean[] fanMay;
    final int quarters;

    Course(Scenario scenario) {
        this.scenario = scenario;
        stages = scenario.site().heater().stages();
        quarters = (int) (scenario.lengthS() / QUARTER_S);
        weather = new float[quarters][STEPS * FIELDS];
        liveW = new float[quarters][STEPS];
        weldedW = new float[quarters][STEPS];
        dryerMay = new boolean[quarters];
        fanMay = new boolean[quarters];
        FaultClock faults = new FaultClock(scenario.faults());
        WeatherCursor cursor = scenario.weather().cursor();
        for (int k = 0; k < quarters; k++) {
            dryerMay[k] = !scenario.site().dryerRelay().isEmpty();
            fanMay[k] = !scenario.site().ventRelay().isEmpty();
            for (int i = 0; i < STEPS; i++) {
                double atS = (double) k * QUARTER_S + (double) i * STEP_S;
                faults.advanceTo(atS);
                lookOut(cursor, (long) atS, faults, weather[k], i * FIELDS);
                lookAtMachines(faults, atS, k, i);
            }
        }
    }

    private void lookOut(WeatherCursor cursor, long atS, FaultClock faults, float[] to, int at) {
        cursor.moveTo(scenario.startEpochS() + atS + STEP_S / 2);
        to[at] = (float) cursor.outsideAirC();
        to[at + 1] = (float) cursor.humidityKgPerKg();
        to[at + 2] = (float) cursor.pressurePa();
        to[at + 3] = (float) cursor.windMPerS();
        to[at + 4] = (float) cursor.skyC();
        to[at + 5] = (float) cursor.globalRadiationWPerM2();
        to[at + DOOR] = faults.isActive(FaultKind.DOOR_OPEN) ? 1 : 0;
        to[at + TORN_M2] = (float) faults.magnitude(FaultKind.COVER_TORN, "");
    }

    private void lookAtMachines(FaultClock faults, double atS, int k, int step) {
        RelaySet down = standingDown(atS);
        boolean mains = !faults.isActive(FaultKind.POWER_CUT) && !faults.isActive(FaultKind.RESIDUAL_CURRENT);
        boolean heats = mains && !faults.isActive(FaultKind.HEATER_FUSE);
        for (int i = 0; i < stages.size(); i++) {
            double stageW = heats ? scenario.machines().heater().stagesW().get(i) : 0;
            String id = stages.get(i).id();
            boolean open = faults.isActive(FaultKind.HEATER_RELAY_OPEN, id) || down.has(i);
            boolean welded = faults.isActive(FaultKind.HEATER_RELAY_WELDED, id);
            liveW[k][step] += (float) (open && !welded ? 0 : stageW);
            weldedW[k][step] += (float) (welded ? stageW : 0);
        }
        boolean stopped = faults.isActive(FaultKind.DRYER_RELAY_OPEN)
                || faults.isActive(FaultKind.DRYER_TRIP)
                || faults.isActive(FaultKind.DRYER_ICED)
                || faults.isActive(FaultKind.TANK_FULL)
                || faults.isActive(FaultKind.HUMIDISTAT_OPEN)
                || down.meets(scenario.site().dryerRelay());
        dryerMay[k] &= mains && !stopped;
        fanMay[k] &= mains && !down.meets(scenario.site().ventRelay());
    }

    private RelaySet standingDown(double atS) {
        RelaySet down = RelaySet.none();
        List<String> ids = scenario.site().machineIds();
        for (StandDownAt order : scenario.orders()) {
            if (order.atS() <= atS) {
                int machine = ids.indexOf(order.machineId());
                down = atS < order.atS() + order.forS() ? down.with(machine) : down.without(machine);
            }
        }
        return down;
    }

    /** Shows the weather of a step to a tunnel. */
    void show(int quarter, int step, Outside outside, Openings openings) {
        float[] from = weather[quarter];
        int at = step * FIELDS;
        outside.set(from[at], from[at + 1], from[at + 2], from[at + 3], from[at + 4], from[at + 5]);
        openings.door(from[at + DOOR] > 0);
        openings.torn(from[at + TORN_M2]);
    }

    /** What the heater gives in a step if its mean over the quarter is to be this: as much of it as its live stages then have, W. */
    double heaterW(int quarter, int step, double meanW) {
        double mostW = mostHeatW(quarter);
        double leastW = leastHeatW(quarter);
        double share = mostW > leastW ? Math.min(1, Math.max(0, (meanW - leastW) / (mostW - leastW))) : 0;
        return weldedW[quarter][step] + share * (liveW[quarter][step] - weldedW[quarter][step]);
    }

    /** Mean over the quarter, all live stages on, W. */
    double mostHeatW(int quarter) {
        return mean(liveW[quarter]);
    }

    /** Mean over the quarter of what cannot be switched off, W. */
    double leastHeatW(int quarter) {
        return mean(weldedW[quarter]);
    }

    /** What can be given in a step, W. */
    double mostNowW(int quarter, int step) {
        return liveW[quarter][step];
    }

    /** What cannot but be given in a step, W. */
    double leastNowW(int quarter, int step) {
        return weldedW[quarter][step];
    }

    boolean mayDry(int quarter) {
        return dryerMay[quarter];
    }

    boolean mayVent(int quarter) {
        return fanMay[quarter];
    }

    /** Mean over the quarter, currency per kWh. */
    double pricePerKWh(int quarter) {
        Site site = scenario.site();
        double sum = 0;
        int minutes = (int) (QUARTER_S / MINUTE_S);
        for (int i = 0; i < minutes; i++) {
            long localS = scenario.startEpochS()
                    + (long) quarter * QUARTER_S
                    + i * MINUTE_S
                    + scenario.offset().getTotalSeconds();
            sum += site.tariff().pricePerKWh((int) Math.floorMod(Math.floorDiv(localS, MINUTE_S), MINUTES_A_DAY));
        }
        return sum / minutes;
    }

    private static double mean(float[] values) {
        double sum = 0;
        for (float value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
