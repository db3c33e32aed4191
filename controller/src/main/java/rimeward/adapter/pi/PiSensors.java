package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.LongSupplier;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.port.Sensors;
import rimeward.site.Attached;
import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * All that the site's real hardware senses. {@link #latch} only looks at what the threads have put down. What the settings promise and
 * do not attach is lost, which control takes for what it is.
 */
public final class PiSensors implements Sensors, AutoCloseable {
    /** A DHT22 may be asked every 2 s (drivers/iio/humidity/dht11.c); the others lose nothing by it, and warm themselves less. */
    static final long PACE_MS = 2_500;

    private final List<Cell> cells = new ArrayList<>();
    private final List<BusThread> threads = new ArrayList<>();
    private final HandedIn handedIn;
    private final PiInputs inputs;
    private final LongSupplier nanoTime;

    /**
     * Starts reading. An absent bus, sensor or line is no error here: it is lost until it comes.
     *
     * @param root {@code /}, or a folder that stands in for it
     * @param nanoTime monotonic time, ns: {@code System.nanoTime}
     */
    public static PiSensors of(Site site, Path root, LongSupplier nanoTime) {
        PiSensors sensors = new PiSensors(site, root, nanoTime, Pi4jBus::new, new Pi4jInputs(root));
        sensors.start();
        return sensors;
    }

    PiSensors(Site site, Path root, LongSupplier nanoTime, IntFunction<I2cBus> i2c, InputTaker taker) {
        this.nanoTime = nanoTime;
        Map<String, List<Watched>> buses = new LinkedHashMap<>();
        Map<Integer, I2cBus> opened = new LinkedHashMap<>();
        Map<String, Cell> handed = new LinkedHashMap<>();
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
            } else if (sensor.attached() instanceof Attached.HandedIn) {
                handed.put(sensor.id(), cell);
            }
        }
        buses.forEach((name, watched) -> threads.add(new BusThread("sensors " + name, PACE_MS, watched)));
        handedIn = new HandedIn(handed, nanoTime);
        inputs = new PiInputs(site, root, nanoTime, taker);
        threads.addAll(inputs.threads());
    }

    private void watch(Map<String, List<Watched>> buses, String bus, Probe probe, Cell cell) {
        buses.computeIfAbsent(bus, name -> new ArrayList<>()).add(new WatchedSensor(probe, cell, nanoTime));
    }

    /** The door for readings that others hand in. */
    public HandedIn handedIn() {
        return handedIn;
    }

    void start() {
        threads.forEach(BusThread::start);
    }

    /** Reads everything once on the caller's thread; for {@code wiring} and tests. May hang with a sensor. */
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
        return new Senses(readings, inputs.powersW(nowNs), inputs.tankFull(nowNs), inputs.doorOpen(nowNs));
    }

    /** Asks the threads to end; does not wait for one that hangs. */
    @Override
    public void close() {
        threads.forEach(BusThread::close);
    }
}
