package rimeward.winter;

import java.util.List;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeatPath;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.VentFanParameters;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.weather.WeatherCursor;
import rimeward.sim.weather.WeatherSample;
import rimeward.sim.weather.WeatherSeries;
import rimeward.sim.world.GrowerRounds;
import rimeward.sim.world.World;
import rimeward.sim.world.WorldPlan;

/**
 * What a simulated tunnel truly loses for each kelvin above outside: kept as warm as in its nights, for days, in a night that is the mean
 * of the scenario's and does not end. What the heater gives then, and the ground, goes outside.
 */
final class SteadyLoss {
    private static final int DAY_S = 86_400;
    private static final int LASTS_S = 8 * DAY_S;
    private static final int LOOKED_AT_S = DAY_S / 2;

    private SteadyLoss() {}

    /** @param insideC mean of the scenario's nights */
    static double wPerK(Scenario scenario, double insideC) {
        WeatherSample night = meanNight(scenario);
        double heatW = scenario.site().tunnel().heatLossWPerK() * (insideC - night.outsideAirC());
        double[] last = heldBy(scenario, night, insideC, heatW);
        for (int round = 0; round < 3; round++) {
            heatW = Math.max(20, heatW * (insideC - night.outsideAirC()) / (last[0] - night.outsideAirC()));
            last = heldBy(scenario, night, insideC, heatW);
        }
        return last[1] / (last[0] - night.outsideAirC());
    }

    /** Benches, °C, and heat lost to outside, W, in the end. */
    private static double[] heldBy(Scenario scenario, WeatherSample night, double startC, double heatW) {
        HeaterParameters heater =
                new HeaterParameters(List.of(heatW), 1200, 200, 20, new DialParameters(40, 2, 60), 500, 400);
        World world = new World(new WorldPlan(
                scenario.tunnel(),
                new MachineParameters(heater, new DryerParameters.None(), VentFanParameters.none()),
                List.of("heater"),
                new StartState(startC, startC, 80, scenario.tunnel().mediumFullKg() * 0.9, 0),
                WeatherSeries.of("one night, for ever", 0, LASTS_S, List.of(night, night)),
                0,
                FaultPlan.none(),
                GrowerRounds.none()));
        world.contact(0, true);
        world.advanceTo(LASTS_S - LOOKED_AT_S);
        double beforeJ = inJ(world);
        world.advanceTo(LASTS_S);
        return new double[] {NightMeans.benchesC(world.truth()), (inJ(world) - beforeJ) / LOOKED_AT_S};
    }

    private static double inJ(World world) {
        var heat = world.truth().heat();
        return heat.inJ(HeatPath.HEATER) + heat.inJ(HeatPath.GROUND) - heat.storedJ();
    }

    private static WeatherSample meanNight(Scenario scenario) {
        WeatherCursor weather = scenario.weather().cursor();
        double[] sum = new double[6];
        int count = 0;
        long end = scenario.startEpochS() + scenario.lengthS();
        for (long at = scenario.startEpochS(); at < end; at += 600) {
            if (NightMeans.isNight(at * 1000)) {
                weather.moveTo(at);
                sum[0] += weather.outsideAirC();
                sum[1] += weather.vapourPa();
                sum[2] += weather.windMPerS();
                sum[3] += weather.pressurePa();
                sum[4] += weather.cloudFraction();
                sum[5] += weather.skyC();
                count++;
            }
        }
        return new WeatherSample(
                sum[0] / count, sum[1] / count, sum[2] / count, sum[3] / count, sum[4] / count, 0, sum[5] / count);
    }
}
