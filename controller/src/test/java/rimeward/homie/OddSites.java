package rimeward.homie;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rimeward.adapter.config.SiteSettings;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.fixture.Sites;
import rimeward.site.Circuit;
import rimeward.site.Contact;
import rimeward.site.Degrees;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.Machine;
import rimeward.site.Page;
import rimeward.site.Place;
import rimeward.site.Role;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;
import rimeward.site.Site;
import rimeward.site.Venting;

/** The example, and sites from a seed: odd ids, many benches, machines or none, names in any writing; and frames of their sensors. */
final class OddSites {
    private static final List<String> IDS =
            List.of("air", "0", "a--b", "duty", "tank", "x-", "outside", "orders", "night");
    private static final List<String> NAMES = List.of("Ä/\"ö\" #+", "north bench", "棚", "a\\b\tc", "$state", "🌱");

    private OddSites() {}

    /** The documented example, its page to be found from elsewhere. */
    static Site example() {
        Page.Address elsewhere = new Page.Address.Known("https://tunnel.hallin.example/");
        return SiteSettings.read(Path.of("..", "config", "tunnel.toml"))
                .with(new Page.Served("127.0.0.1", 8484, new Page.TokenFile.Made(), List.of(), elsewhere));
    }

    static Site of(long seed) {
        Random random = new Random(seed);
        Site usual = Sites.metered();
        List<Sensor> sensors = new ArrayList<>();
        int benches = 1 + random.nextInt(30);
        for (int i = 0; i < benches; i++) {
            sensors.add(sensor(id(random, i), new Place.Bench(NAMES.get(random.nextInt(NAMES.size())) + i), random));
        }
        for (int i = 0; i < random.nextInt(3); i++) {
            sensors.add(sensor("out-" + i, new Place.Outside(), random));
        }
        List<Machine> stages = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            stages.add(machine(id(random, i), Role.HEATER_STAGE, random));
        }
        Drying drying = random.nextInt(3) == 0
                ? new Drying.NoDryer()
                : new Drying.Dryer(
                        machine("dryer", Role.DRYER, random),
                        DryerKind.COMPRESSOR,
                        40,
                        120,
                        1,
                        0.5,
                        random.nextBoolean() ? Double.POSITIVE_INFINITY : 10,
                        random.nextBoolean());
        Venting venting = random.nextBoolean()
                ? new Venting.NoVentFan()
                : new Venting.VentFan(machine("fan", Role.VENT_FAN, random));
        Site site = new Site(
                (random.nextBoolean() ? "t-" : "0") + random.nextInt(1000),
                NAMES.get(random.nextInt(NAMES.size())),
                ZoneOffset.UTC,
                usual.plants(),
                usual.targets(),
                usual.tunnel(),
                sensors,
                new Heater(stages, 120),
                drying,
                venting,
                new Circuit(230, 63, 1, 0, 10),
                usual.tariff(),
                random.nextBoolean() ? new Contact.NotFitted() : new Contact.NotAttached());
        return site.withDegrees(seed % 2 == 0 ? Degrees.CELSIUS : Degrees.FAHRENHEIT);
    }

    private static String id(Random random, int number) {
        return number < IDS.size() ? IDS.get(number) : "n" + number + "-".repeat(random.nextInt(3));
    }

    private static Sensor sensor(String id, Place place, Random random) {
        return new Sensor(id, place, random.nextBoolean(), 0.3, 3, SensorLimits.defaults());
    }

    private static Machine machine(String id, Role role, Random random) {
        return random.nextBoolean()
                ? Sites.machine(id, role, 1000, 60, 60, 12)
                : new Machine(id, role, 1000, 60, 60, 12, false, new rimeward.site.Wiring.NotWired());
    }

    /** A frame in which anything may be missing or absurd. */
    static Frame frame(Site site, Random random, long number, boolean clockTrusted) {
        List<SensorReading> sensors = new ArrayList<>();
        for (Sensor sensor : site.sensors()) {
            sensors.add(new SensorReading(
                    reading(random, 6, 3), sensor.hasHumidity() ? reading(random, 75, 8) : Reading.NOT_FITTED));
        }
        List<Reading> powersW = new ArrayList<>();
        for (Machine machine : site.machines()) {
            powersW.add(machine.hasPowerFeedback() ? reading(random, 500, 500) : Reading.NOT_FITTED);
        }
        boolean tank = site.drying() instanceof Drying.Dryer dryer && dryer.hasTankFloat();
        return new Frame(
                new Tick(number, number * 5000, new WallTime(1_764_000_000_000L + number * 5000, clockTrusted)),
                new Senses(
                        sensors,
                        powersW,
                        tank ? signal(random) : Signal.NOT_FITTED,
                        site.door().isFitted() ? signal(random) : Signal.NOT_FITTED));
    }

    private static Signal signal(Random random) {
        return List.of(Signal.LOST, Signal.OFF, Signal.ON).get(random.nextInt(3));
    }

    private static Reading reading(Random random, double middle, double spread) {
        return switch (random.nextInt(12)) {
            case 0 -> Reading.NO_ANSWER;
            case 1 -> new Reading.Lost(Loss.FAULT_VALUE);
            case 2 -> new Reading.Value(Double.NaN, 1);
            case 3 -> new Reading.Value(Double.POSITIVE_INFINITY, 1);
            case 4 -> new Reading.Value(-0.0, 1);
            default -> new Reading.Value(middle + spread * (random.nextDouble() - 0.5), 1);
        };
    }
}
