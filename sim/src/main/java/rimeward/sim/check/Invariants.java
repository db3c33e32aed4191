package rimeward.sim.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rimeward.core.decision.Reason;
import rimeward.core.judgement.Judgement;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** All properties of one run, held against the truth at every tick; for one thread. */
public final class Invariants {
    private final GapRule gap;
    private final RestRule rest;
    private final QuietRule quiet;
    private final ExplainRule explain;
    private final Rule[] rules;
    private RelaySet was = RelaySet.none();

    public Invariants(Site site) {
        gap = new GapRule(site);
        rest = new RestRule(site);
        quiet = new QuietRule(site);
        explain = new ExplainRule(site);
        rules = new Rule[] {
            new FloorRule(site), gap, new CircuitRule(site), new HotRule(site), new FailWarmRule(site, gap)
        };
    }

    /** One tick under control. */
    public void look(Facts now, List<Reason> reasons, Judgement believed) {
        if (!now.closed.equals(was)) {
            was = now.closed;
            rest.switched(now, reasons);
            quiet.switched(now, reasons);
            explain.switched(now, reasons, believed);
        }
        lookAlways(now);
    }

    /** Time without a controller, when nobody decides anything and relays fall by themselves. */
    public void lookInTheDark(Facts now) {
        was = now.closed;
        rest.fell(now);
        quiet.fell(now);
        explain.fell(now);
        lookAlways(now);
    }

    private void lookAlways(Facts now) {
        for (Rule rule : rules) {
            rule.look(now);
        }
    }

    /** Whether, by these facts, the coldest bench is so near the floor that somebody has to give heat. */
    public boolean isNeeded(Facts now) {
        return gap.isNeeded(now);
    }

    public boolean isGap(Facts now) {
        return gap.isGap(now);
    }

    /** Time near the floor with heat in hand and nobody giving it, whatever the cause, s. */
    public long gapS() {
        return gap.gapS();
    }

    /** What did not hold, in the properties' order; empty is good. */
    public List<Breach> breaches() {
        Stream<Optional<Breach>> onSwitches = Stream.of(rest.breach(), quiet.breach(), explain.breach());
        Stream<Optional<Breach>> always = Stream.of(rules).map(Rule::breach);
        return Stream.concat(onSwitches, always)
                .flatMap(Optional::stream)
                .sorted((a, b) -> a.property().compareTo(b.property()))
                .toList();
    }
}
