package rimeward.fitting;

import java.util.Locale;
import rimeward.port.Relays;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Wiring;

/** Moves each relay once, by name, so that a person hears and sees whether the right one moves. All others stay in their stop state. */
public final class Clicks {
    private static final double HOLD_S = 2;

    /** Between two relays, so that a person can tell the second click of one from the first of the next. */
    private static final double REST_S = 1;

    private final Site site;
    private final Relays relays;
    private final Person person;
    private final Clock clock;

    /** @param relays now in their stop state */
    public Clicks(Site site, Relays relays, Person person, Clock clock) {
        this.site = site;
        this.relays = relays;
        this.person = person;
        this.clock = clock;
    }

    /** @param asking whether each relay waits for the person's word */
    public void run(boolean asking) {
        for (int i = 0; i < site.machines().size(); i++) {
            Machine machine = site.machines().get(i);
            if (machine.wiring() instanceof Wiring.GpioLine at) {
                person.say("\n" + described(machine, at, site.stopState().has(i)));
                String answer = asking ? person.ask("  Enter to click, s to skip, q to end: ") : "";
                if (answer.equalsIgnoreCase("q")) {
                    return;
                }
                if (answer.isEmpty()) {
                    click(i);
                } else {
                    person.say("  skipped");
                }
            }
        }
    }

    private void click(int machine) {
        RelaySet stop = site.stopState();
        RelaySet moved = stop.has(machine) ? stop.without(machine) : withinTheCircuit(stop.with(machine), machine);
        try {
            relays.close(moved);
            clock.waitS(HOLD_S);
        } finally {
            relays.close(stop);
        }
        person.say("  done: " + site.machines().get(machine).id()
                + (stop.has(machine) ? " is closed again" : " is open again"));
        clock.waitS(REST_S);
    }

    /** Who rests closed makes room for a machine that the circuit would not carry besides. */
    private RelaySet withinTheCircuit(RelaySet both, int machine) {
        return site.ratedW(both) <= site.circuit().limitW()
                ? both
                : RelaySet.none().with(machine);
    }

    private static String described(Machine machine, Wiring.GpioLine at, boolean closedAtStop) {
        String role = machine.role().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return String.format(
                Locale.ROOT,
                "%s: %s, %.0f W\n  %s\n  it rests %s: for %.0f s it %s, then it %s again. Listen for two clicks, watch its lamp.",
                machine.id(),
                role,
                machine.ratedW(),
                line(at),
                closedAtStop ? "closed" : "open",
                HOLD_S,
                closedAtStop ? "opens" : "closes",
                closedAtStop ? "closes" : "opens");
    }

    /** Where a relay should hang, as people read it. */
    public static String line(Wiring.GpioLine at) {
        return at.chip() + " line " + at.line() + " (GPIO" + at.line() + "), " + Header40.pin(at.line())
                + "; closed while the line is " + (at.activeLow() ? "low" : "high");
    }
}
