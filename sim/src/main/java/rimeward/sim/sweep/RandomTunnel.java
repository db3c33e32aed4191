package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.List;
import rimeward.sim.device.SensorVices;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.physics.BenchParameters;
import rimeward.sim.physics.CoverKind;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.DryerCase;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.HumidistatParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.Panel;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.physics.VentFanParameters;
import rimeward.site.Circuit;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.Machine;
import rimeward.site.Place;
import rimeward.site.Plant;
import rimeward.site.Role;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;
import rimeward.site.Site;
import rimeward.site.Targets;
import rimeward.site.Tariff;
import rimeward.site.Tunnel;
import rimeward.site.Venting;
import rimeward.site.Wiring;

/** A tunnel, its machines and what its grower believes of it, made by chance within what is built. */
public final class RandomTunnel {
    /** What tunnels are covered with; glass is for houses. */
    static final List<CoverKind> FILMS =
            List.of(CoverKind.SINGLE_FILM, CoverKind.DOUBLE_FILM, CoverKind.BUBBLE_LINED_FILM, CoverKind.TWIN_WALL);

    private final double floorC;
    private final double coldestC;
    private final List<CoverKind> covers;
    private final String id;
    private final SeededStream luck;
    private final double floorM2;
    private final TunnelParameters truth;
    private final double lossWPerK;
    private final int benches;
    private final boolean metered;
    private final Drying drying;
    private final Heater heater;
    private final Venting venting;
    private final double limitW;
    private final double guess;
    private final double lagS;

    /** Under film or twin-wall sheet. */
    public RandomTunnel(String id, SeededStream luck) {
        this(id, luck, FILMS);
    }

    /** @param covers to choose from */
    RandomTunnel(String id, SeededStream luck, List<CoverKind> covers) {
        this.covers = List.copyOf(covers);
        this.id = id;
        this.luck = luck;
        floorM2 = luck.between(12, 36);
        floorC = luck.between(2, 7);
        coldestC = floorC - luck.between(6, 14);
        benches = 1 + luck.below(4);
        guess = luck.between(0.85, 1.2);
        lagS = luck.between(30, 150);
        metered = luck.below(3) > 0;
        truth = makeTruth();
        lossWPerK = Panel.lossWPerK(truth.cover()) + 0.3 * floorM2; // and its leaks, roughly
        drying = makeDryer();
        heater = makeHeater();
        venting = luck.below(3) == 0
                ? new Venting.VentFan(machine("vent-fan", Role.VENT_FAN, luck.between(15, 60), 60, 60, 12))
                : new Venting.NoVentFan();
        limitW = heater.ratedW() * luck.between(1.05, 1.6) + 60;
    }

    private TunnelParameters makeTruth() {
        TunnelParameters usual = Defaults.tunnel();
        double size = floorM2 / usual.floorM2();
        List<BenchParameters> all = new ArrayList<>();
        for (int i = 0; i < benches; i++) {
            all.add(new BenchParameters("bench " + i, luck.between(-0.6, 0.4), luck.between(-0.08, 0.05)));
        }
        double fullKg = usual.mediumFullKg() * size;
        return new TunnelParameters(
                List.of(new Panel(covers.get(luck.below(covers.size())), 2.1 * floorM2)),
                floorM2,
                floorM2 * luck.between(1.5, 2.2),
                usual.quickJPerK() * size * luck.between(0.6, 1.8),
                usual.massJPerK() * size * luck.between(0.5, 2),
                usual.massAirWPerK() * size * luck.between(0.7, 2.5),
                usual.groundWPerK() * size,
                luck.between(4, 9),
                usual.leakCm2() * size * luck.between(0.5, 2),
                usual.doorCm2(),
                usual.wetM2() * size * luck.between(0.3, 1.5),
                fullKg,
                fullKg / 2,
                luck.between(0, 0.6),
                luck.between(0.5, 0.9),
                310,
                all);
    }

    private Drying makeDryer() {
        int kind = luck.below(5);
        if (kind == 0) {
            return new Drying.NoDryer();
        }
        boolean sorption = kind < 4;
        double size = Math.sqrt(floorM2 / 24);
        double ratedW = (sorption ? 600 : 500) * size * luck.between(0.8, 1.2);
        return new Drying.Dryer(
                machine("dryer", Role.DRYER, ratedW, 300, 180, 6),
                sorption ? DryerKind.SORPTION : DryerKind.COMPRESSOR,
                40 * size,
                sorption ? 240 : 0,
                sorption ? 1 : 3,
                0.33 * size,
                luck.between(3, 10),
                luck.below(2) == 1);
    }

    /** Bought for its coldest night with something to spare, in one to three stages. */
    private Heater makeHeater() {
        double allW = lossWPerK * (floorC + 3 - coldestC) * luck.between(1.25, 1.8);
        int stages = 1 + luck.below(3);
        List<Machine> each = new ArrayList<>();
        for (int i = 0; i < stages; i++) {
            each.add(machine("heater-" + (i + 1), Role.HEATER_STAGE, allW / stages, 60, 60, 12));
        }
        return new Heater(each, StrictMath.rint(30 + lagS)); // the element's own lag, and the sensors'
    }

    private Machine machine(String id, Role role, double ratedW, double minOnS, double minRestS, int startsPerH) {
        boolean seen = role == Role.DRYER || metered;
        return new Machine(
                id,
                role,
                StrictMath.rint(ratedW),
                minOnS,
                minRestS,
                startsPerH,
                seen && metered,
                new Wiring.NotWired());
    }

    public double floorC() {
        return floorC;
    }

    /** Outside temperature that the heater was bought for, °C. */
    public double coldestC() {
        return coldestC;
    }

    public TunnelParameters truth() {
        return truth;
    }

    /** What the grower believes is off by the same factor throughout. */
    public Site site() {
        double airJPerK = truth.volumeM3() * 1260 + truth.quickJPerK();
        List<Sensor> sensors = new ArrayList<>();
        for (int i = 0; i < benches; i++) {
            sensors.add(
                    new Sensor("sensor-" + i, new Place.Bench("bench " + i), i == 0, 0.3, 3, SensorLimits.defaults()));
        }
        sensors.add(new Sensor("outside", new Place.Outside(), true, 0.5, 4, SensorLimits.defaults()));
        return new Site(
                id,
                "Made",
                List.of(new Plant("seedlings", floorC)),
                new Targets(0.5, 1, 28, 82, 8, 1, -6),
                new Tunnel(
                        floorM2,
                        truth.volumeM3(),
                        310,
                        lossWPerK * guess,
                        airJPerK * guess,
                        truth.massJPerK() * guess,
                        truth.massAirWPerK() * guess,
                        0.5),
                sensors,
                heater,
                drying,
                venting,
                new Circuit(230, Math.min(125, limitW / 230 / 0.8), 0.8, 0, 10),
                new Tariff.Flat("GBP", 0.3));
    }

    /** What they truly are. To be asked once: each asking draws anew. */
    public MachineParameters machines() {
        double size = heater.ratedW() / 2000;
        HeaterParameters real = new HeaterParameters(
                heater.stages().stream().map(Machine::ratedW).toList(),
                1200 * size,
                20 * size,
                4 * size,
                new DialParameters(floorC + 12, 2.5, 180),
                150,
                90);
        VentFanParameters fan = venting instanceof Venting.VentFan plate
                ? new VentFanParameters(floorM2 * 12, plate.machine().ratedW())
                : VentFanParameters.none();
        return new MachineParameters(real, dryer(), fan);
    }

    private DryerParameters dryer() {
        if (!(drying instanceof Drying.Dryer plate)) {
            return new DryerParameters.None();
        }
        DryerCase body = new DryerCase(
                plate.fanW(),
                3000,
                15,
                4,
                plate.minimumAirC(),
                plate.tankL(),
                new HumidistatParameters(luck.between(40, 70), 8, 600, 300));
        double restW = plate.machine().ratedW() - plate.fanW();
        return plate.kind() == DryerKind.SORPTION
                ? new DryerParameters.Sorption(body, restW, plate.collectionLPerH(), 15, 0.02, 30, plate.runOnS())
                : new DryerParameters.Compressor(body, 20, 1.6, 14, 0.4, 600, 260, 180);
    }

    /** Truthful: none is off by more than is stated of it. To be asked once, after the machines. */
    public List<SensorVices> vices() {
        List<SensorVices> all = new ArrayList<>();
        for (int i = 0; i <= benches; i++) {
            all.add(new SensorVices(
                    luck.between(0.6, 1) * lagS,
                    luck.between(-0.2, 0.2),
                    0.03,
                    0.01,
                    0,
                    luck.between(-2, 2),
                    0.3,
                    0.1));
        }
        return all;
    }
}
