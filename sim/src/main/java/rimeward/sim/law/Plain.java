package rimeward.sim.law;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Reason;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** The decision of someone who gives no reasons. */
final class Plain {
    private static final Reason ASKED = Reason.of(Cause.ASKED);
    private static final Reason NOT_ASKED = Reason.of(Cause.NOT_ASKED);

    private Plain() {}

    static Decision wish(Site site, RelaySet on, LawState next) {
        List<Reason> reasons = new ArrayList<>(site.machines().size());
        for (int i = 0; i < site.machines().size(); i++) {
            reasons.add(on.has(i) ? ASKED : NOT_ASKED);
        }
        return new Decision(on, reasons, next);
    }
}
