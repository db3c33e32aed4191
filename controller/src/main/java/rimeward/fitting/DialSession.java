package rimeward.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.site.Machine;
import rimeward.site.Meter;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Finds out what the marks of a heater's dial mean: the person sets a mark, the heater runs on its own thermostat, and the bench is
 * watched. The floor and the hot limit are held throughout, while a name is awaited too.
 */
public final class DialSession {
    private static final double LOOK_S = 1;
    private static final int LOOKS_A_LINE = 60;

    /** What the person chose. */
    public record Choice(int stage, int sensor, int swings) {}

    private final Site site;
    private final Sensors sensors;
    private final Relays relays;
    private final Person person;
    private final Clock clock;
    private final Choice choice;
    private final Limits limits;
    private final List<Mark> marks = new ArrayList<>();

    /** @param relays now in their stop state */
    public DialSession(Site site, Sensors sensors, Relays relays, Person person, Clock clock, Choice choice) {
        this.site = site;
        this.sensors = sensors;
        this.relays = relays;
        this.person = person;
        this.clock = clock;
        this.choice = choice;
        limits = new Limits(site);
    }

    /** Goes on until the person ends it; the relays are then in their stop state. */
    public List<Mark> run() {
        Machine heater = site.machines().get(choice.stage());
        try {
            for (Optional<String> name = awaited(heater); name.isPresent(); name = awaited(heater)) {
                marks.add(tried(name.get(), heater));
                person.say(DialTable.of(marks));
            }
        } finally {
            relays.close(site.stopState());
        }
        return List.copyOf(marks);
    }

    /** The next mark's name; empty when the person has had enough. */
    private Optional<String> awaited(Machine heater) {
        person.say("Set the dial of " + heater.id() + " to a mark, type its name, Enter. Only Enter: end.");
        boolean warned = false;
        Optional<String> typed = person.typed();
        while (typed.isEmpty()) {
            Senses senses = sensors.latch();
            Limits.Asked asked = look(senses, site.stopState());
            if (asked.tooCold() && !warned) {
                warned = true;
                person.say(
                        "The coldest bench is at the floor's margin. Turn the dial up, or end and start the service.");
            }
            clock.waitS(LOOK_S);
            typed = person.typed();
        }
        return typed.filter(name -> !name.isBlank() && !name.equalsIgnoreCase("q"));
    }

    private Mark tried(String name, Machine heater) {
        RelaySet alone = RelaySet.none().with(choice.stage());
        TurnFinder finder = isMetered(heater) ? new TurnByPower(heater.ratedW()) : new TurnByAir();
        DialTrial trial =
                new DialTrial(name, choice.swings(), finder, site.heater().deadTimeS(), clock.nowS());
        person.say("Watching " + name + " " + finder.inWords() + ", at "
                + site.sensors().get(choice.sensor()).id() + ". Enter ends this mark early.");
        for (int looks = 0; ; looks++) {
            Senses senses = sensors.latch();
            Reading bench = senses.sensors().get(choice.sensor()).airC();
            Limits.Asked asked = look(senses, alone);
            DialTrial.Next next =
                    trial.look(clock.nowS(), bench, senses.powersW().get(choice.stage()), asked);
            if (next instanceof DialTrial.Next.End end) {
                return trial.mark(end.why());
            }
            if (looks % LOOKS_A_LINE == 0) {
                person.say(progress(bench, trial, asked));
            }
            clock.waitS(LOOK_S);
            if (person.typed().isPresent()) {
                return trial.mark("ended early");
            }
        }
    }

    /** Attached, though it may have nothing to tell before the heater draws something; or telling something already. */
    private boolean isMetered(Machine heater) {
        boolean isAttached = heater.meter().isFitted() && !(heater.meter() instanceof Meter.NotAttached);
        return isAttached || sensors.latch().powersW().get(choice.stage()) instanceof Reading.Value;
    }

    private Limits.Asked look(Senses senses, RelaySet wanted) {
        Limits.Asked asked = limits.look(senses, wanted);
        relays.close(limits.apply(asked, wanted));
        return asked;
    }

    private String progress(Reading bench, DialTrial trial, Limits.Asked asked) {
        String air = bench instanceof Reading.Value value
                ? String.format(Locale.ROOT, "%.1f °C", value.value())
                : "no reading";
        return "  bench " + air + ", swings " + trial.swings() + " of " + choice.swings()
                + (asked.helping().isEmpty() ? "" : "; near the floor, so " + site.inWords(asked.helping()) + " helps");
    }
}
