package rimeward.homie;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rimeward.core.Outcome;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.site.Degrees;
import rimeward.site.Messaging.Command;
import rimeward.site.Site;

/** The coming night as it is forecast; while nothing is, its sentence says what it waits for. */
final class NightNode {
    private static final long GRAIN_S = 600; // an end counted in seconds from now wavers with each tick. Own choice

    private NightNode() {}

    static Node of(Site site, Degrees degrees, Set<Command> allowed) {
        List<Node.Leaf> leaves = new ArrayList<>();
        leaves.add(new Node.Leaf(Property.text("says", "The coming night"), look -> says(look.outcome(), degrees)));
        leaves.add(new Node.Leaf(
                Property.number("lowest-outside", "Lowest outside temperature expected", degrees.unit()),
                look -> look.outcome().outlook() instanceof Outlook.Night night
                        ? Shown.temperature(degrees, night.lowestOutsideC())
                        : Shown.NOTHING));
        leaves.add(new Node.Leaf(
                Property.number("spread", "Standard deviation of that", degrees.spanUnit()),
                look -> look.outcome().outlook() instanceof Outlook.Night night
                        ? Shown.number(degrees.ofSpan(night.spreadK()), 0.05, 1)
                        : Shown.NOTHING));
        leaves.add(
                new Node.Leaf(Property.of("ends", "When it is over", Datatype.DATETIME), look -> ends(look.outcome())));
        if (allowed.contains(Command.PLAN_NOW)) {
            leaves.add(new Node.Leaf(
                    Property.of("plan", "Plan the night now", Datatype.ENUM)
                            .as("now")
                            .settable(true)
                            .passing(),
                    look -> Shown.NOTHING));
        }
        if (allowed.contains(Command.HAND_FORECAST)) {
            leaves.add(new Node.Leaf(
                    Property.of("forecast", "The forecast handed over last", Datatype.JSON)
                            .as(ForecastText.SCHEMA)
                            .settable(true),
                    look -> Shown.text(look.told().forecast)));
        }
        return new Node("night", "The coming night at " + site.name(), "night", leaves);
    }

    private static Shown says(Outcome outcome, Degrees degrees) {
        if (!(outcome.outlook() instanceof Outlook.Night night)) {
            return Shown.text("no forecast: the floor is kept by what the sensors show; a plan waits for one");
        }
        String text = "down to " + degrees.text(night.lowestOutsideC()) + " outside, give or take "
                + degrees.span(night.spreadK());
        return new Shown.Text(Long.toString(night.night()), text);
    }

    private static Shown ends(Outcome outcome) {
        WallTime wall = outcome.frame().tick().wall();
        if (!(outcome.outlook() instanceof Outlook.Night night) || !wall.trusted()) {
            return Shown.NOTHING;
        }
        long endS = wall.epochMs() / 1000 + (long) night.endsInS();
        Instant end = Instant.ofEpochSecond((endS + GRAIN_S / 2) / GRAIN_S * GRAIN_S);
        return new Shown.Text(Long.toString(night.night()), end.toString());
    }
}
