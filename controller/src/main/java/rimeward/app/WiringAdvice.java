package rimeward.app;

import java.util.ArrayList;
import java.util.List;
import rimeward.fitting.Header40;
import rimeward.site.Attached;
import rimeward.site.Contact;
import rimeward.site.Drying;
import rimeward.site.InputLine;
import rimeward.site.Machine;
import rimeward.site.Meter;
import rimeward.site.Role;
import rimeward.site.Sensor;
import rimeward.site.Site;
import rimeward.site.Wiring;

/** What settings may say of the wiring but a careful grower would not. */
final class WiringAdvice {
    /** Goes high while a Raspberry Pi starts: seen in the field. */
    private static final int SERIAL_OUT = 14;

    private final List<String> advice = new ArrayList<>();
    private final Site site;

    private WiringAdvice(Site site) {
        this.site = site;
    }

    /** Nothing for settings that attach nothing: they are the simulator's. */
    static List<String> of(Site site) {
        WiringAdvice all = new WiringAdvice(site);
        if (isReal(site)) {
            all.sensors();
            all.relays();
            all.meters();
            all.contacts();
        }
        return all.advice;
    }

    /** Whether anything at all is attached. */
    static boolean isReal(Site site) {
        return site.sensors().stream().anyMatch(WiringAdvice::isAttached)
                || site.machines().stream()
                        .anyMatch(machine -> isWired(machine) || machine.meter().isAttached())
                || tankFloat(site) instanceof Contact.OnLine
                || site.door() instanceof Contact.OnLine;
    }

    private static boolean isAttached(Sensor sensor) {
        return !(sensor.attached() instanceof Attached.NotAttached);
    }

    private static boolean isWired(Machine machine) {
        return machine.wiring() instanceof Wiring.GpioLine;
    }

    private static Contact tankFloat(Site site) {
        return site.drying() instanceof Drying.Dryer dryer ? dryer.tankFloat() : new Contact.NotFitted();
    }

    private void sensors() {
        for (Sensor sensor : site.sensors()) {
            if (!isAttached(sensor)) {
                say("sensor " + sensor.id() + " is not attached, and other things are: it gives no reading");
            }
        }
    }

    private void relays() {
        List<Machine> wired =
                site.machines().stream().filter(WiringAdvice::isWired).toList();
        if (wired.size() < site.machines().size()) {
            say(
                    wired.isEmpty()
                            ? "no machine has a relay: nothing is ever switched"
                            : "some machines have a relay and others have none: those without are never switched");
        }
        boolean leftOn = wired.stream()
                .filter(machine -> machine.role() == Role.HEATER_STAGE)
                .anyMatch(machine -> ((Wiring.GpioLine) machine.wiring()).closedAtStop());
        if (!wired.isEmpty() && !leftOn) {
            say("no heater stage is closed at stop: if this program ends, no heater is left on its own thermostat");
        }
        wired.forEach(machine -> pull(machine, (Wiring.GpioLine) machine.wiring()));
    }

    /** What the Pi itself does with a line before a program takes it, and where the kernel lets go of it. */
    private void pull(Machine machine, Wiring.GpioLine at) {
        if (!at.chip().contains("pinctrl")) {
            return;
        }
        boolean closed = Header40.isPulledUp(at.line()) != at.activeLow();
        if (at.line() == SERIAL_OUT) {
            say("the relay of " + machine.id()
                    + " is on line 14, the serial port's output, which goes high while the Pi"
                    + " starts: take another line");
        } else if (closed != at.closedAtStop()) {
            say("while the Pi starts, its own pull on line " + at.line() + " leaves the relay of " + machine.id()
                    + (closed ? " closed" : " open") + ", and at stop it is to be " + (closed ? "open" : "closed")
                    + ": take a line with the other pull (0 to 8 are pulled high, 9 to 27 low), the relay's other contact, or"
                    + " a strong pull outside");
        }
    }

    private void meters() {
        for (Machine machine : site.machines()) {
            if (machine.meter() instanceof Meter.NotAttached) {
                say("power_feedback of " + machine.id()
                        + " is true and no meter is attached: what it draws is never known");
            } else if (machine.meter() instanceof Meter.Running running && isActiveWhenCut(running.at())) {
                say("a cut wire of " + machine.id()
                        + "'s contact reads as a running machine: turn active_low or pull round");
            }
        }
    }

    private void contacts() {
        if (tankFloat(site) instanceof Contact.NotAttached) {
            say("tank_float is true and no contact is attached: whether the tank is full is never known");
        } else if (tankFloat(site) instanceof Contact.OnLine on && isPulledButNotActive(on.at())) {
            say(
                    "a cut wire of the tank's float reads as not full: a contact that opens when the tank is full tells of both");
        }
    }

    private static boolean isActiveWhenCut(InputLine at) {
        return at.pull() == (at.activeLow() ? InputLine.Pull.DOWN : InputLine.Pull.UP);
    }

    private static boolean isPulledButNotActive(InputLine at) {
        return at.pull() != InputLine.Pull.NONE && !isActiveWhenCut(at);
    }

    private void say(String line) {
        advice.add(line);
    }
}
