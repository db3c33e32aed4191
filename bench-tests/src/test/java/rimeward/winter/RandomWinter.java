package rimeward.winter;

import java.time.ZoneOffset;
import java.util.List;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.fault.RandomFaults;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.scenario.Gates;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.sweep.RandomTunnel;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;
import rimeward.sim.weather.WeatherSeries;
import rimeward.sim.world.GrowerRounds;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** A few days of made winter in a made tunnel, all from one seed. */
public final class RandomWinter {
    private static final Place PLACE = new Place(54.6, -2.6, 310);
    private static final long NOON_EPOCH_S = 1_385_899_200; // 2013-12-01T12:00Z
    private static final long DAY_S = 86_400;

    final long seed;
    final RandomTunnel tunnel;
    private final int days;

    public RandomWinter(long seed, int days) {
        this.seed = seed;
        this.days = days;
        tunnel = new RandomTunnel("made-" + seed, SeededStream.named(seed, "tunnel"));
    }

    /** About three faults a day, of any kind, from two minutes to six hours. */
    public Scenario withFaults() {
        Site site = tunnel.site();
        RandomFaults chance = new RandomFaults(
                List.of(FaultKind.values()),
                site.sensors().stream().map(Sensor::id).toList(),
                site.heater().stages().stream().map(Machine::id).toList(),
                3,
                120,
                6 * 3600);
        return scenario(chance.plan(seed, (double) (days * DAY_S)));
    }

    Scenario sound() {
        return scenario(FaultPlan.none());
    }

    /** The same with a trace by the minute. */
    Scenario soundByTheMinute() {
        return scenario(FaultPlan.none(), 4, 9, 60);
    }

    /** Without faults, and with frost on most nights. */
    Scenario frosty() {
        return scenario(FaultPlan.none(), 3, 5);
    }

    /** Without faults, and around the floor outside: nights on which a dryer's heat may be enough. */
    Scenario mild() {
        double floorK = tunnel.floorC() - tunnel.coldestC();
        return scenario(FaultPlan.none(), floorK - 3, floorK + 2);
    }

    private Scenario scenario(FaultPlan faults) {
        return scenario(faults, 4, 9);
    }

    /** Milder than the coldest that the heater was bought for, in the mean, by something between these, K. */
    private Scenario scenario(FaultPlan faults, double leastK, double mostK) {
        return scenario(faults, leastK, mostK, 600);
    }

    private Scenario scenario(FaultPlan faults, double leastK, double mostK, int traceEveryS) {
        SeededStream luck = SeededStream.named(seed, "weather");
        double meanC = tunnel.coldestC() + luck.between(leastK, mostK);
        Recipe recipe = new Recipe(
                PLACE,
                NOON_EPOCH_S,
                days + 1,
                seed,
                meanC,
                luck.between(0.5, 2.5),
                luck.between(2, 10),
                luck.between(0, 4),
                luck.between(0.2, 0.9),
                luck.between(0.5, 6));
        WeatherSeries weather = recipe.make();
        Site site = tunnel.site();
        MachineParameters machines = tunnel.machines();
        return new Scenario(
                "random-" + seed,
                "Random winter " + seed,
                "Made.",
                site,
                tunnel.truth(),
                machines,
                machines,
                tunnel.vices(),
                luck.below(2) == 1,
                start(luck),
                weather,
                new ForecastModel(luck.between(-1, 2), luck.between(0, 2), seed),
                NOON_EPOCH_S,
                days * DAY_S,
                5,
                traceEveryS,
                seed,
                ZoneOffset.UTC,
                faults,
                List.of(),
                new GrowerRounds(21 * 3600, DAY_S),
                "duty",
                List.of(),
                Gates.NONE);
    }

    long lengthS() {
        return days * DAY_S;
    }

    private StartState start(SeededStream luck) {
        double airC = tunnel.floorC() + luck.between(3, 8);
        return new StartState(airC, airC + luck.between(-1, 2), luck.between(50, 95), 100, 0);
    }
}
