package rimeward.adapter.pi;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.LongSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rimeward.site.Attached;

/** What hangs on this machine, whether or not the settings know of it. Looks and asks; changes nothing. */
public final class Inventory {
    private static final Pattern BUS = Pattern.compile("i2c-(\\d{1,3})");
    private static final Pattern CHIP_ON_BUS = Pattern.compile("(\\d{1,3})-00([0-9a-f]{2})");

    private final Path root;
    private final IntFunction<I2cBus> i2c;
    private final LongSupplier nanoTime;
    private final List<Found> found = new ArrayList<>();

    private Inventory(Path root, IntFunction<I2cBus> i2c, LongSupplier nanoTime) {
        this.root = root;
        this.i2c = i2c;
        this.nanoTime = nanoTime;
    }

    /**
     * Everything found, in the order of its kinds.
     *
     * @param root {@code /}, or a folder that stands in for it, in which no bus is asked
     * @param nanoTime monotonic time, ns
     */
    public static List<Found> of(Path root, LongSupplier nanoTime) {
        I2cBus nobody = (address, command, waitMs, length) -> {
            throw new IOException("a folder is no bus");
        };
        boolean real = root.equals(Path.of("/"));
        return of(root, bus -> real ? new Pi4jBus(bus) : nobody, nanoTime);
    }

    static List<Found> of(Path root, IntFunction<I2cBus> i2c, LongSupplier nanoTime) {
        Inventory inventory = new Inventory(root, i2c, nanoTime);
        inventory.gpio();
        inventory.i2c();
        inventory.oneWire();
        inventory.hwmon();
        inventory.iio();
        return inventory.found;
    }

    private void gpio() {
        for (Path chip : Folders.in(root.resolve("sys/class/gpio"))) {
            String label = Folders.line(chip.resolve("label"));
            if (!label.isEmpty()) {
                add(Found.Kind.GPIO_CHIP, label, Folders.line(chip.resolve("ngpio")) + " lines", none());
            }
        }
        if (found.isEmpty()) { // the kernel was built without the files that tell labels
            for (Path chip : named("dev", Pattern.compile("gpiochip\\d+"))) {
                add(
                        Found.Kind.GPIO_CHIP,
                        "/dev/" + chip.getFileName(),
                        "its label: gpiodetect (package gpiod)",
                        none());
            }
        }
    }

    private void i2c() {
        for (Path device : named("dev", BUS)) {
            int number = number(BUS, device);
            for (Path chip : onBus(number)) {
                String driver =
                        isDriven(chip) ? "driven by the kernel" : "known to the kernel, which has no driver for it";
                add(
                        Found.Kind.I2C,
                        "bus " + number + ", " + I2cScan.hex(address(chip)),
                        Folders.line(chip.resolve("name")) + ", " + driver,
                        none());
            }
            if (Files.isReadable(device) && Files.isWritable(device)) {
                ask(number);
            } else {
                add(Found.Kind.I2C, "bus " + number, "closed to you: use sudo, or the group i2c", none());
            }
        }
    }

    private void ask(int number) {
        List<Integer> driven = onBus(number).stream()
                .filter(Inventory::isDriven)
                .map(Inventory::address)
                .toList();
        try (I2cBus bus = i2c.apply(number)) {
            found.addAll(new I2cScan(number, bus, nanoTime).run(driven::contains));
        }
    }

    private void oneWire() {
        for (Path device : Folders.in(root.resolve("sys/bus/w1/devices"))) {
            String name = device.getFileName().toString();
            if (!name.startsWith("w1_bus_master")) {
                boolean isSensor = Attached.OneWire.isName(name);
                add(
                        Found.Kind.ONE_WIRE,
                        name,
                        isSensor ? "DS18B20" : "no DS18B20",
                        isSensor ? new Attached.OneWire(name) : none());
            }
        }
    }

    private void hwmon() {
        for (Path chip : named("sys/bus/i2c/devices", CHIP_ON_BUS)) {
            Folders.starting(chip.resolve("hwmon"), "hwmon").ifPresent(monitor -> {
                int bus = number(CHIP_ON_BUS, chip);
                add(
                        Found.Kind.HWMON,
                        "bus " + bus + ", " + I2cScan.hex(address(chip)),
                        Folders.line(monitor.resolve("name")),
                        new Attached.Hwmon(bus, address(chip)));
            });
        }
        for (Path monitor : Folders.in(root.resolve("sys/class/hwmon"))) {
            if (Folders.line(monitor.resolve("in0_lcrit_alarm")).equals("1")) {
                add(
                        Found.Kind.HWMON,
                        "supply",
                        "the Pi's 5 V have been too low: a stronger supply, a shorter cable",
                        none());
            }
        }
    }

    private void iio() {
        for (Path device : Folders.in(root.resolve("sys/bus/iio/devices"))) {
            String name = Folders.line(device.resolve("name"));
            if (!name.isEmpty()) {
                add(Found.Kind.IIO, name, device.getFileName().toString(), new Attached.Iio(name));
            }
        }
    }

    // ---- looking

    private List<Path> named(String folder, Pattern name) {
        return Folders.in(root.resolve(folder)).stream()
                .filter(entry -> name.matcher(entry.getFileName().toString()).matches())
                .toList();
    }

    private List<Path> onBus(int number) {
        return named("sys/bus/i2c/devices", Pattern.compile(number + "-00[0-9a-f]{2}"));
    }

    private static boolean isDriven(Path chip) {
        return Files.exists(chip.resolve("driver"));
    }

    private static int address(Path chip) {
        return Integer.parseInt(chip.getFileName().toString().replaceFirst(".*-", ""), 16);
    }

    private static int number(Pattern pattern, Path entry) {
        return Stream.of(pattern.matcher(entry.getFileName().toString()))
                .filter(Matcher::matches)
                .mapToInt(match -> Integer.parseInt(match.group(1)))
                .sum();
    }

    private static Attached none() {
        return new Attached.NotAttached();
    }

    private void add(Found.Kind kind, String name, String what, Attached attached) {
        found.add(new Found(kind, name, what, attached));
    }
}
