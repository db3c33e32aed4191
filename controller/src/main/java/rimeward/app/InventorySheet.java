package rimeward.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.adapter.pi.Found;
import rimeward.fitting.Clicks;
import rimeward.fitting.Header40;
import rimeward.site.Attached;
import rimeward.site.Contact;
import rimeward.site.Drying;
import rimeward.site.InputLine;
import rimeward.site.Machine;
import rimeward.site.Meter;
import rimeward.site.Sensor;
import rimeward.site.Site;
import rimeward.site.Wiring;

/** What was found on this machine, against what the settings say hangs there. */
final class InventorySheet {
    private final Site site;
    private final List<Found> found;
    private final StringBuilder text = new StringBuilder();
    private boolean complete = true;

    private InventorySheet(Site site, List<Found> found) {
        this.site = site;
        this.found = found;
    }

    /**
     * The sheet.
     *
     * @param complete whether all that the settings name was found
     */
    record Sheet(String text, boolean complete) {}

    static Sheet of(Site site, List<Found> found) {
        InventorySheet sheet = new InventorySheet(site, found);
        for (Found.Kind kind : Found.Kind.values()) {
            sheet.found(kind);
        }
        sheet.lines();
        sheet.missing();
        return new Sheet(sheet.text.toString(), sheet.complete);
    }

    private void found(Found.Kind kind) {
        text.append(kind.heading()).append('\n');
        List<Found> these = found.stream().filter(each -> each.kind() == kind).toList();
        if (these.isEmpty()) {
            line("none");
        }
        for (Found each : these) {
            line(String.format(Locale.ROOT, "%-22s %-22s %s", each.name(), each.what(), use(each))
                    .stripTrailing());
        }
    }

    private String use(Found each) {
        List<String> users = new ArrayList<>();
        if (each.kind() == Found.Kind.GPIO_CHIP) {
            site.machines().stream()
                    .filter(machine -> machine.wiring() instanceof Wiring.GpioLine at
                            && at.chip().equals(each.name()))
                    .forEach(machine -> users.add(machine.id()));
            return users.isEmpty() ? "" : "relays of " + String.join(", ", users);
        }
        if (each.attached() instanceof Attached.NotAttached) {
            return "";
        }
        site.sensors().stream()
                .filter(sensor -> sensor.attached().equals(each.attached()))
                .forEach(sensor -> users.add(sensor.id()));
        return users.isEmpty()
                ? "not in the settings: " + settings(each.attached())
                : "sensor " + String.join(", ", users);
    }

    private void lines() {
        text.append("Lines in the settings\n");
        for (Machine machine : site.machines()) {
            String relay = machine.wiring() instanceof Wiring.GpioLine at ? Clicks.line(at) : "on no line";
            line(String.format(Locale.ROOT, "%-22s %s", "relay of " + machine.id(), relay));
            if (machine.meter() instanceof Meter.Pulses pulses) {
                input("meter of " + machine.id(), pulses.at());
            } else if (machine.meter() instanceof Meter.Running contact) {
                input("contact of " + machine.id(), contact.at());
            }
        }
        if (site.drying() instanceof Drying.Dryer dryer && dryer.tankFloat() instanceof Contact.OnLine contact) {
            input("tank float", contact.at());
        }
        if (site.door() instanceof Contact.OnLine contact) {
            input("door", contact.at());
        }
    }

    private void input(String name, InputLine at) {
        line(String.format(
                Locale.ROOT,
                "%-22s %s line %d (GPIO%d), %s; active while the line is %s",
                name,
                at.chip(),
                at.line(),
                at.line(),
                Header40.pin(at.line()),
                at.activeLow() ? "low" : "high"));
    }

    private void missing() {
        List<String> lines = new ArrayList<>();
        for (Sensor sensor : site.sensors()) {
            boolean isLookedFor = !(sensor.attached() instanceof Attached.NotAttached)
                    && !(sensor.attached() instanceof Attached.HandedIn);
            if (isLookedFor && found.stream().noneMatch(each -> each.attached().equals(sensor.attached()))) {
                lines.add("sensor " + sensor.id() + ": " + settings(sensor.attached())
                        + "; look at its plug, its cable, and whether the bus is switched on (raspi-config)");
            }
        }
        List<String> chips = found.stream()
                .filter(each ->
                        each.kind() == Found.Kind.GPIO_CHIP && !each.name().startsWith("/dev/"))
                .map(Found::name)
                .toList();
        for (Machine machine : site.machines()) {
            if (machine.wiring() instanceof Wiring.GpioLine at && !chips.isEmpty() && !chips.contains(at.chip())) {
                lines.add("relay of " + machine.id() + ": chip = \"" + at.chip() + "\"; found are the labels above");
            }
        }
        if (!lines.isEmpty()) {
            complete = false;
            text.append("In the settings, and not found\n");
            lines.forEach(this::line);
        }
    }

    /** As the settings would say it. */
    private static String settings(Attached attached) {
        if (attached instanceof Attached.I2c at) {
            String by = at.chip() == Attached.Chip.SHT3X ? "i2c-sht3x" : "i2c-sht4x";
            return String.format(Locale.ROOT, "by = \"%s\", bus = %d, address = 0x%02x", by, at.bus(), at.address());
        }
        if (attached instanceof Attached.Hwmon at) {
            return String.format(Locale.ROOT, "by = \"hwmon\", bus = %d, address = 0x%02x", at.bus(), at.address());
        }
        if (attached instanceof Attached.OneWire at) {
            return "by = \"one-wire\", device = \"" + at.device() + "\"";
        }
        return attached instanceof Attached.Iio at ? "by = \"iio\", device = \"" + at.device() + "\"" : "";
    }

    private void line(String line) {
        text.append("  ").append(line).append('\n');
    }
}
