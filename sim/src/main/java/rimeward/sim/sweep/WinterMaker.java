package rimeward.sim.sweep;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.fault.RandomFaults;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.physics.CoverKind;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.scenario.Gates;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.HoursOfDays;
import rimeward.sim.weather.Place;
import rimeward.sim.world.GrowerRounds;
import rimeward.site.Circuit;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** Makes a winter by its seed: tunnel, machines, sensors, weather and forecast, and what is to go wrong in it. */
final class WinterMaker {
    private static final long NOV_10_NOON_EPOCH_S = 1_384_084_800; // 2013-11-10T12:00Z
    private static final int SEASON_DAYS = 125; // to the middle of March
    private static final long DAY_S = 86_400;
    private static final int TICK_S = 5;
    private static final int TRACE_S = 3600;
    private static final double ALTITUDE_M = 310;
    private static final double STORM_FAULTS_A_DAY = 3;
    private static final List<String> RIVALS = List.of("thermostat", "dryer-alone", "by-hand", "always-on");

    private final WeatherMaker weatherMaker;
    private final int days;

    WinterMaker(WeatherMaker weatherMaker, int days) {
        this.weatherMaker = weatherMaker;
        this.days = days;
    }

    /**
     * A winter in which nothing goes wrong yet, unless it is one of storms.
     *
     * @param troubles what is to go wrong in it
     */
    record Made(Scenario scenario, Place place, String weather, List<Trouble> troubles) {}

    Made make(long seed) {
        RandomTunnel tunnel = tunnel(seed);
        Site site = tunnel.site();
        SeededStream luck = SeededStream.named(seed, "winter");
        Place place = new Place(rounded(luck.between(44, 60)), 0, ALTITUDE_M);
        long startS = NOV_10_NOON_EPOCH_S + luck.below(SEASON_DAYS - days) * DAY_S;
        double coldestC = tunnel.coldestC() + luck.between(-1, 7);
        HourlyWeather weather = weatherMaker.make(coldestC, place, startS, days, SeededStream.named(seed, "weather"));
        MachineParameters machines = tunnel.machines();
        Scenario scenario = new Scenario(
                "winter-" + seed,
                "Winter of seed " + seed,
                "Made by chance: " + weather.says() + ".",
                site,
                tunnel.truth(),
                machines,
                byHand(machines, tunnel.floorC()),
                tunnel.vices(),
                luck.below(2) == 1,
                start(tunnel, luck),
                HoursOfDays.series(weather.says(), place, startS, weather.rows()),
                new ForecastModel(luck.between(-1, 2), luck.between(0, 2), seed),
                startS,
                days * DAY_S,
                TICK_S,
                TRACE_S,
                seed,
                ZoneOffset.UTC,
                Troubles.isStorm(seed) ? storm(site, seed) : FaultPlan.none(),
                List.of(),
                new GrowerRounds(21 * 3600, DAY_S), // at nine in the morning
                "duty",
                RIVALS,
                Gates.NONE);
        return new Made(scenario, place, weather.says(), troubles(site, seed));
    }

    /** The first of this seed whose machines all fit the circuit, as settings demand. */
    private static RandomTunnel tunnel(long seed) {
        List<CoverKind> covers = List.of(CoverKind.values());
        for (int attempt = 0; ; attempt++) {
            SeededStream luck = SeededStream.named(seed, "tunnel " + attempt);
            RandomTunnel tunnel = new RandomTunnel("tunnel-" + seed, luck, covers);
            if (fits(tunnel.site())) {
                return tunnel;
            }
        }
    }

    private static boolean fits(Site site) {
        Circuit circuit = site.circuit();
        double fanW = site.drying() instanceof Drying.Dryer dryer ? dryer.fanW() : 0;
        return site.machines().stream().mapToDouble(Machine::ratedW).max().orElse(0) + fanW < circuit.limitW();
    }

    private static List<Trouble> troubles(Site site, long seed) {
        Troubles all = new Troubles(site, SeededStream.named(seed, "troubles"));
        List<Trouble> here = new ArrayList<>();
        Troubles.namesOf(seed).forEach(name -> here.addAll(all.of(name)));
        return here;
    }

    /** About three faults a day, of any kind, from two minutes to six hours; at whole seconds, as files have them. */
    private FaultPlan storm(Site site, long seed) {
        RandomFaults chance = new RandomFaults(
                List.of(FaultKind.values()),
                site.sensors().stream().map(Sensor::id).toList(),
                site.heater().stages().stream().map(Machine::id).toList(),
                STORM_FAULTS_A_DAY,
                120,
                6 * 3600);
        return chance.plan(seed, (double) (days * DAY_S));
    }

    /** Without Rimeward the dial keeps the floor: a few kelvins above it, because its marks are not to be trusted. Common practice. */
    private static MachineParameters byHand(MachineParameters machines, double floorC) {
        HeaterParameters heater = machines.heater();
        DialParameters dial = heater.dial();
        return new MachineParameters(
                new HeaterParameters(
                        heater.stagesW(),
                        heater.elementJPerK(),
                        heater.blownWPerK(),
                        heater.stillWPerK(),
                        new DialParameters(floorC + 5, dial.differentialK(), dial.lagS()),
                        heater.cutOutC(),
                        heater.cutOutResetC()),
                machines.dryer(),
                machines.ventFan());
    }

    private static StartState start(RandomTunnel tunnel, SeededStream luck) {
        double airC = tunnel.floorC() + luck.between(3, 8);
        double fullKg = tunnel.truth().mediumFullKg();
        return new StartState(
                airC, airC + luck.between(-1, 2), luck.between(50, 95), fullKg * luck.between(0.5, 0.95), 0);
    }

    private static double rounded(double value) {
        return StrictMath.rint(value * 100) / 100;
    }
}
