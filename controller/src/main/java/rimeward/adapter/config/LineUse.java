package rimeward.adapter.config;

import java.util.HashSet;
import java.util.Set;
import rimeward.site.Contact;
import rimeward.site.InputLine;
import rimeward.site.Meter;
import rimeward.site.Wiring;

/** Which lines and meters the settings have given away: none serves two. */
final class LineUse {
    private final Set<Object> used = new HashSet<>();

    void relay(TableReader table, Wiring wiring) {
        if (wiring instanceof Wiring.GpioLine at) {
            use(table, "relay", at.chip(), at.line());
        }
    }

    void meter(TableReader table, Meter meter) {
        if (meter instanceof Meter.Pulses pulses) {
            input(table, "meter", pulses.at());
        } else if (meter instanceof Meter.Running running) {
            input(table, "meter", running.at());
        } else if (meter.isAttached() && !used.add(meter)) {
            table.fault("meter", "reads what another machine's meter reads too", "give each machine its own");
        }
    }

    void contact(TableReader table, String key, Contact contact) {
        if (contact instanceof Contact.OnLine on) {
            input(table, key, on.at());
        }
    }

    private void input(TableReader table, String key, InputLine at) {
        use(table, key, at.chip(), at.line());
    }

    private void use(TableReader table, String key, String chip, int line) {
        if (!used.add(chip + " " + line)) {
            table.fault(key, "sits on a line that something else uses too", "give each its own line");
        }
    }
}
