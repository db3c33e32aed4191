package rimeward.sim.device;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.port.Sensors;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.world.Truth;
import rimeward.sim.world.World;
import rimeward.site.Drying;
import rimeward.site.Place;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** All that the simulated controller senses: sensors, meters, float and door contact. For the world's thread. */
public final class SimSensors implements Sensors {
    private final World world;
    private final Site site;
    private final boolean doorContact;
    private final List<SimSensor> sensors = new ArrayList<>();
    private final boolean[] hasMeter;
    private final Reading.Value[] meters; // what each showed last
    private double lastS;

    /**
     * Sensors as the site lists them.
     *
     * @param vices one for each of the site's sensors
     * @param doorContact whether the door has a contact
     * @throws IllegalArgumentException if a sensor hangs on a bench that the world does not have
     */
    public SimSensors(World world, Site site, List<SensorVices> vices, boolean doorContact, long seed) {
        this.world = world;
        this.site = site;
        this.doorContact = doorContact;
        for (int i = 0; i < site.sensors().size(); i++) {
            Sensor sensor = site.sensors().get(i);
            sensors.add(new SimSensor(
                    sensor.id(),
                    spot(sensor.place()),
                    sensor.hasHumidity(),
                    vices.get(i),
                    SeededStream.named(seed, "sensor " + sensor.id()),
                    world.truth()));
        }
        hasMeter = new boolean[site.machines().size()];
        meters = new Reading.Value[hasMeter.length];
        Arrays.fill(meters, new Reading.Value(0, 0));
        for (int i = 0; i < hasMeter.length; i++) {
            hasMeter[i] = site.machines().get(i).hasPowerFeedback();
        }
        lastS = world.elapsedS();
    }

    private Spot spot(Place place) {
        return place instanceof Place.Bench bench
                ? new Spot.Bench(world.truth().bench(bench.name()))
                : new Spot.Outside();
    }

    @Override
    public Senses latch() {
        double dtS = world.elapsedS() - lastS;
        lastS = world.elapsedS();
        SensorReading[] readings = new SensorReading[sensors.size()];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = sensors.get(i).read(world.truth(), world.faults(), dtS);
        }
        return new Senses(Arrays.asList(readings), powersW(), tankFull(), doorOpen());
    }

    private List<Reading> powersW() {
        boolean lost = world.faults().isActive(FaultKind.POWER_FEEDBACK_LOST);
        Reading[] powersW = new Reading[meters.length];
        for (int i = 0; i < powersW.length; i++) {
            if (!hasMeter[i]) {
                powersW[i] = Reading.NOT_FITTED;
            } else {
                powersW[i] = lost ? Reading.NO_ANSWER : metered(i, world.truth().powerW(i));
            }
        }
        return Arrays.asList(powersW);
    }

    /** The same again where nothing changed, which is most of the time. */
    private Reading metered(int machine, double powerW) {
        if (meters[machine].value() != powerW) {
            meters[machine] = new Reading.Value(powerW, 0);
        }
        return meters[machine];
    }

    private Signal tankFull() {
        if (!(site.drying() instanceof Drying.Dryer dryer) || !dryer.hasTankFloat()) {
            return Signal.NOT_FITTED;
        }
        return world.truth().isTankFull() ? Signal.ON : Signal.OFF;
    }

    private Signal doorOpen() {
        if (!doorContact) {
            return Signal.NOT_FITTED;
        }
        Truth truth = world.truth();
        return truth.isDoorOpen() ? Signal.ON : Signal.OFF;
    }
}
