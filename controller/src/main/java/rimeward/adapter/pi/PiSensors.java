package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.LongSupplier;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.port.Sensors;
import rimeward.site.Attached;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * The site's real sensors. {@link #latch} only looks at what the buses' threads have put down. Meters, tank float and door contact have
 * no adapter yet: where the settings promise one, it is lost, which control takes for what it is.
 */
public final class PiSensors implements Sensors, AutoCloseable {
    private final List<Cell> cells = new ArrayList<>();
    private final List<BusThread> threads = new ArrayList<>();
    private final List<Reading> powersW;
    private final Signal tankFull;
    private final LongSupplier nanoTime;

    /**
     * Starts reading. An absent bus or sensor is no error here: it is lost until it comes.
     *
     * @param root {@code /}, or a folder that stands in for it
     * @param nanoTime monotonic time, ns
     */
    public static PiSensors of(Site site, Path root, LongSupplier nanoTime) {
        PiSensors sensors = new PiSensors(site, root, nanoTime, Pi4jBus::new);
        sensors.start();
        return sensors;
    }

    PiSensors(Site site, Path root, LongSupplier nanoTime, IntFunction<I2cBus> i2c) {
        this.nanoTime = nanoTime;
        Map<String, List<BusThread.Watched>> buses = new LinkedHashMap<>();
        Map<Integer, I2cBus> opened = new LinkedHashMap<>();
        for (Sensor sensor : site.sensors()) {
            Cell cell = new Cell(sensor);
            cells.add(cell);
            if (sensor.attached() instanceof Attached.I2c at) {
                I2cBus bus = opened.computeIfAbsent(at.bus(), i2c::apply);
                watch(buses, "i2c-" + at.bus(), new ShtProbe(bus, at), cell);
            } else if (sensor.attached() instanceof Attached.Hwmon at) {
                watch(buses, "hwmon-" + at.bus(), new HwmonProbe(root, at), cell);
            } else if (sensor.attached() instanceof Attached.OneWire at) {
                watch(buses, "one-wire", new OneWireProbe(root, at), cell);
            } else if (sensor.attached() instanceof Attached.Iio at) {
                watch(buses, "iio-" + at.device(), new IioProbe(root, at), cell);
            }
        }
        buses.forEach((name, watched) -> threads.add(new BusThread("sensors " + name, watched, nanoTime)));
        powersW = site.machines().stream().map(PiSensors::power).toList();
        boolean hasFloat = site.drying() instanceof Drying.Dryer dryer && dryer.hasTankFloat();
        tankFull = hasFloat ? Signal.LOST : Signal.NOT_FITTED;
    }

    private static void watch(Map<String, List<BusThread.Watched>> buses, String bus, Probe probe, Cell cell) {
        buses.computeIfAbsent(bus, name -> new ArrayList<>()).add(new BusThread.Watched(probe, cell));
    }

    private static Reading power(Machine machine) {
        return machine.hasPowerFeedback() ? Reading.NO_ANSWER : Reading.NOT_FITTED;
    }

    void start() {
        threads.forEach(BusThread::start);
    }

    /** Reads every sensor once on the caller's thread; for {@code wiring} and tests. May hang with a sensor. */
    public void readOnce() {
        threads.forEach(BusThread::round);
    }

    @Override
    public Senses latch() {
        long nowNs = nanoTime.getAsLong();
        List<SensorReading> readings = new ArrayList<>(cells.size());
        for (Cell cell : cells) {
            readings.add(cell.latch(nowNs));
        }
        return new Senses(readings, powersW, tankFull, Signal.NOT_FITTED);
    }

    /** Asks the threads to end; does not wait for one that hangs. */
    @Override
    public void close() {
        threads.forEach(BusThread::close);
    }
}
