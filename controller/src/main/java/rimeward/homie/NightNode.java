package rimeward.homie;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rimeward.core.Outcome;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.Outlook;
import rimeward.core.outlook.PlanText;
import rimeward.core.reading.WallTime;
import rimeward.site.Degrees;
import rimeward.site.Messaging.Command;
import rimeward.site.Site;

/** The coming night as it is forecast and planned; while nothing is, its sentence says what it waits for. */
final class NightNode {
    private static final long GRAIN_S = 600; // an end counted in seconds from now wavers with each tick. Own choice

    private NightNode() {}

    static Node of(Site site, Degrees degrees, Set<Command> allowed) {
        List<Node.Leaf> leaves = new ArrayList<>();
        leaves.add(new Node.Leaf(Property.text("says", "The coming night"), look -> says(look, site)));
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
        leaves.addAll(planned(site));
        leaves.add(new Node.Leaf(
                Property.text("last", "What the last night took, and what plainer ways would have taken"),
                look -> Shown.text(look.told().lastNight)));
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

    private static List<Node.Leaf> planned(Site site) {
        return List.of(
                planned(
                        Property.number("chance-of-cold", "Chance that the floor cannot be held", "%"),
                        plan -> Shown.number(100 * plan.chanceCold(), 1, 0)),
                planned(
                        Property.text("holds", "Who carries the warm duty"),
                        plan -> Shown.text(PlanText.holders(plan, site))),
                planned(
                        Property.number("energy", "Electricity of all machines expected", "kWh"),
                        plan -> Shown.number(plan.kWh().value(), 0.1, 1)),
                planned(
                        Property.number(
                                "cost", "What that costs, in " + site.tariff().currency(), ""),
                        plan -> Shown.number(plan.cost().value(), 0.01, 2)),
                planned(
                        Property.number("water", "Water expected in the dryer's tank", "L"),
                        plan -> Shown.number(plan.litres().value(), 0.1, 1)));
    }

    private static Node.Leaf planned(Property property, Function<NightPlan, Shown> shown) {
        return new Node.Leaf(property, look -> plan(look).map(shown).orElse(Shown.NOTHING));
    }

    /** The plan while its night is not over. */
    private static Optional<NightPlan> plan(Look look) {
        WallTime wall = look.outcome().frame().tick().wall();
        return Optional.ofNullable(look.told().plan)
                .filter(plan -> wall.trusted() && wall.epochMs() / 1000 < plan.endEpochS());
    }

    private static Shown says(Look look, Site site) {
        return plan(look)
                .<Shown>map(plan -> new Shown.Text("plan " + plan.madeEpochS(), PlanText.brief(plan, site)))
                .orElseGet(() -> forecast(look.outcome(), site.degrees()));
    }

    private static Shown forecast(Outcome outcome, Degrees degrees) {
        if (!(outcome.outlook() instanceof Outlook.Night night)) {
            return Shown.text(
                    "no plan yet: the floor is kept by what the sensors show; from noon on the night is planned");
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
