package rimeward.record;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.Outcome;
import rimeward.core.decision.Reason;
import rimeward.core.reading.Tick;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** One relay that changed, and why. */
public record Switched(Tick at, String machine, boolean on, boolean overruled, Reason why) {

    /** One for each relay whose command differs from {@code before}. */
    public static List<Switched> between(Site site, RelaySet before, Outcome outcome) {
        RelaySet now = outcome.guarded().closed();
        if (now.equals(before)) {
            return List.of();
        }
        List<Switched> all = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            if (now.has(i) != before.has(i)) {
                Reason why = outcome.guarded().reasons().get(i);
                boolean overruled = outcome.guarded().overruled().has(i);
                String machine = site.machines().get(i).id();
                all.add(new Switched(outcome.frame().tick(), machine, now.has(i), overruled, why));
            }
        }
        return List.copyOf(all);
    }
}
