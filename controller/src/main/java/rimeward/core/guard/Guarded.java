package rimeward.core.guard;

import java.util.List;
import rimeward.core.decision.Reason;
import rimeward.site.RelaySet;

/**
 * The last word of one tick.
 *
 * @param closed relays to close; all others open
 * @param overruled machines whose wish the guard did not follow
 * @param reasons one for each machine: the guard's own where it overruled or a machine stands down, else the law's
 * @param holder who carries the warm duty
 * @param next what the guard will be handed at the next tick
 */
public record Guarded(RelaySet closed, RelaySet overruled, List<Reason> reasons, Holder holder, GuardState next) {}
