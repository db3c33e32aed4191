package rimeward.sim.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.sim.run.Least;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Place;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** The door: what a law's run is measured against. Each call is for one thread; several may run at once. */
public final class Bound {
    /** A trace with rows farther apart does not say well enough what the law kept, s. Own choice. */
    private static final int MOST_TRACE_S = 300;

    /** What the programme may miss by being straight, K; not counted as broken. */
    private static final double HELD_K = 0.05;

    private final Scenario scenario;
    private final Course course;
    private final Probe probe;
    private final Box box;
    private final Kept kept;

    private Bound(Scenario scenario, RunResult law) {
        this.scenario = scenario;
        course = new Course(scenario);
        probe = new Probe(scenario, course);
        box = Box.of(scenario, course);
        kept = KeptReader.read(scenario, law.trace(), course.quarters);
    }

    /** The least for what this law kept, and where the rest went. */
    public static Least of(Scenario scenario, RunResult law) throws BadInput {
        require(scenario);
        return new Bound(scenario, law).least(law);
    }

    /** Only {@link Least#steps}: neither money nor playback, a third of the work. */
    public static List<Least.Step> steps(Scenario scenario, RunResult law) throws BadInput {
        require(scenario);
        Bound bound = new Bound(scenario, law);
        return bound.steps(
                law, bound.search(bound.box, Search.Goal.ELECTRICITY).from(bound.kept.schedule(), bound.kept));
    }

    private static void require(Scenario scenario) throws BadInput {
        if (scenario.lengthS() % Course.QUARTER_S != 0) {
            throw new BadInput("the bound goes by quarters of an hour, and " + scenario.id() + " lasts "
                    + scenario.lengthS() + " s; give it a length of whole quarters");
        }
        if (scenario.traceEveryS() > MOST_TRACE_S) {
            throw new BadInput("the bound reads from the trace what the law kept, and " + scenario.id()
                    + " has a row only every " + scenario.traceEveryS() + " s; set trace_every_s to " + MOST_TRACE_S
                    + " or less");
        }
    }

    private Search search(Box within, Search.Goal goal) {
        return new Search(probe, course, within, goal);
    }

    private Least least(RunResult law) {
        Path thrifty = search(box, Search.Goal.ELECTRICITY).from(kept.schedule(), kept);
        Path cheap = search(box, Search.Goal.MONEY).from(thrifty.schedule(), kept);
        Playback played = play(thrifty, Search.Goal.ELECTRICITY);
        Playback playedCheap = play(cheap, Search.Goal.MONEY);
        return new Least(
                thrifty.kWh(),
                cheap.cost(course),
                played.kWh(),
                playedCheap.cost(),
                Math.max(0, Math.max(played.shortK(), playedCheap.shortK())),
                kept.dampPercentH(),
                Math.max(played.dampPercentH(), playedCheap.dampPercentH()),
                kept.belowH(),
                kept.belowH() > 0 ? Optional.of(held(thrifty)) : Optional.empty(),
                steps(law, thrifty));
    }

    /** With dryer and fan wholly on or off, and the heater adapted to that. */
    private Playback play(Path path, Search.Goal goal) {
        Schedule whole = path.schedule().rounded();
        Path adapted = search(box.fixed(whole), goal).from(whole, kept);
        return Playback.of(scenario, course, adapted, kept, Replay.plan(scenario, true));
    }

    private Least.Held held(Path from) {
        Kept strict = kept.strict();
        Path path = search(box, Search.Goal.ELECTRICITY).from(from.schedule(), strict);
        int below = 0;
        for (Quarter quarter : path.quarters()) {
            below += quarter.lowestC() < kept.floorC() - HELD_K ? 1 : 0;
        }
        return new Least.Held(path.kWh(), below * Course.QUARTER_H, Math.max(0, Shortness.ofK(path, strict)));
    }

    /** The same for floors as far up as the law had to stay above its own, for one reason after the other. */
    private List<Least.Step> steps(RunResult law, Path least) {
        Site site = scenario.site();
        double marginK = site.targets().guardMarginK();
        double unsureK = site.sensors().stream()
                .filter(sensor -> sensor.place() instanceof Place.Bench)
                .mapToDouble(Sensor::uncertaintyK)
                .max()
                .orElse(0);
        double swingK = site.targets().differentialK() / 2;
        List<Least.Step> steps = new ArrayList<>();
        steps.add(new Least.Step("with perfect foresight, the floor itself", least.kWh()));
        Path path = raised(least, marginK);
        steps.add(new Least.Step("held above the floor by the guard margin", path.kWh()));
        path = raised(path, marginK + unsureK);
        steps.add(new Least.Step("and by the sensors' uncertainty", path.kWh()));
        path = raised(path, marginK + unsureK + swingK);
        steps.add(new Least.Step("and by half the differential", path.kWh()));
        steps.add(new Least.Step(law.law().name(), law.summary().totalKWh()));
        return steps;
    }

    private Path raised(Path from, double byK) {
        return search(box, Search.Goal.ELECTRICITY).from(from.schedule(), kept.withFloor(kept.floorC() + byK));
    }
}
