package rimeward.sim.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.core.Outcome;
import rimeward.core.Stepped;
import rimeward.port.Courier;
import rimeward.port.Journal;
import rimeward.sim.check.Facts;
import rimeward.sim.check.Invariants;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.world.Truth;
import rimeward.sim.world.World;
import rimeward.site.Site;

/**
 * Takes down one run: hears every outcome and alert at the controller's doors, and looks at the truth behind them before and after each
 * tick. For one thread.
 */
final class Recorder implements Journal, Courier, VirtualTicker.Passing {
    private final LawLabel law;
    private final FailState failState;
    private final Truth truth;
    private final Observer observer;
    private final BiConsumer<Outcome, Truth> onlooker;
    private final Facts facts;
    private final Invariants checks;
    private final Switches switches;
    private final Sums sums;
    private final TraceWriter trace;
    private final int tickS;
    private final List<AlertEvent> alerts = new ArrayList<>();
    private int raised;

    /** The controller's last word; none while there is no controller. */
    private @Nullable Outcome lastWord;

    Recorder(Scenario scenario, LawLabel law, World world, FailState failState, BiConsumer<Outcome, Truth> onlooker) {
        this.onlooker = onlooker;
        truth = world.truth();
        this.law = law;
        this.failState = failState;
        Site site = scenario.site();
        tickS = scenario.tickS();
        long startEpochS = scenario.startEpochS();
        observer = new Observer(world, site, startEpochS);
        facts = observer.facts();
        checks = new Invariants(site);
        switches = new Switches(site, startEpochS);
        sums = new Sums(site, world.truth(), scenario.offset().getTotalSeconds());
        trace = new TraceWriter(
                world.truth(), scenario.weather().cursor(), checks, startEpochS, scenario.traceEveryS());
    }

    @Override
    public void record(Stepped stepped, List<Alert> told) {
        Outcome outcome = stepped.outcome();
        failState.commanded(outcome.guarded().closed());
        observer.standDown(outcome.guarded().next().standDowns().machines());
        observer.begin(outcome.guarded().closed());
        sums.begin(facts, observer.coldestBench(), tickS);
        boolean switched = switches.command(facts.epochS, outcome.guarded());
        trace.begin(facts, outcome, switched);
        lastWord = outcome;
        onlooker.accept(outcome, truth);
    }

    /** In a replay the doors are sound. */
    @Override
    public boolean isFailing() {
        return false;
    }

    /** Rivals tell nobody anything: without Rimeward nobody is there to hear it. */
    @Override
    public void tell(Alert alert) {
        boolean up = alert.isNew();
        if (law.guarded() && (up || alert.change() == Alert.Change.CLEARED)) { // what is told again is no news
            raised += up ? 1 : 0;
            alerts.add(new AlertEvent(facts.epochS, alert.kind(), alert.subject(), up, alert.text()));
        }
    }

    @Override
    public void controllerGone() {
        failState.fall();
    }

    @Override
    public void beginDark() {
        observer.begin(failState.closed());
        sums.begin(facts, observer.coldestBench(), tickS);
        switches.fall(facts.epochS, failState.closed());
        trace.beginDark(facts);
    }

    @Override
    public void end(long lastsS) {
        observer.end(lastsS);
        if (lastWord == null) {
            checks.lookInTheDark(facts);
        } else {
            checks.look(facts, lastWord.guarded().reasons(), lastWord.judgement());
            lastWord = null;
        }
        trace.end(facts);
    }

    RunResult result() {
        long endEpochS = observer.nowEpochS();
        Summary summary = sums.summary(checks, switches, endEpochS, raised);
        return new RunResult(law, summary, trace.build(), switches.events(), alerts);
    }
}
