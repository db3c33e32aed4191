package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.site.Contact;
import rimeward.site.Drying;
import rimeward.site.InputLine;
import rimeward.site.Machine;
import rimeward.site.Meter;
import rimeward.site.Site;

/** All that is sensed beside the air: the machines' power, the tank's float, the door. */
final class PiInputs {
    /** A power chip measures by itself; this is often enough. */
    private static final long POWER_PACE_MS = 2_000;

    private final Path root;
    private final LongSupplier nanoTime;
    private final InputTaker taker;
    private final List<PowerSense> powersW = new ArrayList<>();
    private final List<BusThread> threads = new ArrayList<>();
    private final List<Watched> contacts = new ArrayList<>();
    private final ContactSense tankFull;
    private final ContactSense doorOpen;

    /** What is known of a contact. */
    @FunctionalInterface
    private interface ContactSense {
        Signal latch(long nowNs);
    }

    PiInputs(Site site, Path root, LongSupplier nanoTime, InputTaker taker) {
        this.root = root;
        this.nanoTime = nanoTime;
        this.taker = taker;
        site.machines().forEach(machine -> powersW.add(power(machine)));
        tankFull = site.drying() instanceof Drying.Dryer dryer
                ? contact("the tank's float", dryer.tankFloat())
                : nowNs -> Signal.NOT_FITTED;
        doorOpen = contact("the door's switch", site.door());
        if (!contacts.isEmpty()) {
            threads.add(new BusThread("contacts", WatchedContact.PACE_MS, contacts));
        }
    }

    private ContactSense contact(String what, Contact contact) {
        if (contact instanceof Contact.OnLine on) {
            return watch(what, on.at(), false)::latch;
        }
        Signal always = contact.isFitted() ? Signal.LOST : Signal.NOT_FITTED;
        return nowNs -> always;
    }

    private ContactCell watch(String what, InputLine at, boolean onMains) {
        ContactCell cell = new ContactCell(what);
        contacts.add(new WatchedContact(held(what, at, onMains), at, onMains, cell, nanoTime));
        return cell;
    }

    private HeldLine held(String what, InputLine at, boolean edges) {
        return new HeldLine(what, at, edges, taker, nanoTime);
    }

    private PowerSense power(Machine machine) {
        String what = "the meter of " + machine.id();
        Meter meter = machine.meter();
        if (meter instanceof Meter.Pulses at) {
            PulsePower power = new PulsePower(what, at.pulsesPerKWh());
            own(what, WatchedPulses.PACE_MS, new WatchedPulses(held(what, at.at(), true), power, nanoTime));
            return power;
        }
        if (meter instanceof Meter.Counter at) {
            PulsePower power = new PulsePower(what, at.pulsesPerKWh());
            own(what, WatchedCounter.PACE_MS, new WatchedCounter(root, at, power, nanoTime));
            return power;
        }
        if (meter instanceof Meter.Running at) {
            ContactCell cell = watch("the contact of " + machine.id(), at.at(), true);
            return nowNs -> cell.latchW(machine.ratedW(), nowNs);
        }
        if (meter instanceof Meter.PowerFile at) {
            PowerCell cell = new PowerCell(what, at.inWords());
            PowerFileProbe probe = new PowerFileProbe(root, at);
            own(what, POWER_PACE_MS, () -> {
                long askedNs = nanoTime.getAsLong();
                cell.put(probe.read(), askedNs);
            });
            return cell;
        }
        Reading always = meter.isFitted() ? Reading.NO_ANSWER : Reading.NOT_FITTED;
        return nowNs -> always;
    }

    private void own(String name, long paceMs, Watched watched) {
        threads.add(new BusThread(name, paceMs, List.of(watched)));
    }

    List<BusThread> threads() {
        return threads;
    }

    List<Reading> powersW(long nowNs) {
        List<Reading> readings = new ArrayList<>(powersW.size());
        for (PowerSense each : powersW) {
            readings.add(each.latch(nowNs));
        }
        return readings;
    }

    Signal tankFull(long nowNs) {
        return tankFull.latch(nowNs);
    }

    Signal doorOpen(long nowNs) {
        return doorOpen.latch(nowNs);
    }
}
