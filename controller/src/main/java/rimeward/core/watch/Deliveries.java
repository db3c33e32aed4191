package rimeward.core.watch;

import java.util.List;
import rimeward.site.RelaySet;

/**
 * What each machine is seen to do, in the site's order.
 *
 * @param failed heater stages that lately gave nothing when they should have, and have not been seen to give since
 * @param dryerNotDrying whether the dryer has run for long without drying
 */
public record Deliveries(List<Delivery> each, RelaySet failed, boolean dryerNotDrying) {
    public Delivery of(int machine) {
        return each.get(machine);
    }

    /** Those that run though their relay should be open: the circuit carries them all the same. */
    public RelaySet stuck() {
        RelaySet stuck = RelaySet.none();
        for (int i = 0; i < each.size(); i++) {
            stuck = each.get(i) == Delivery.STUCK_ON ? stuck.with(i) : stuck;
        }
        return stuck;
    }

    /** Whether any machine of the set is seen so. */
    public boolean any(RelaySet set, Delivery delivery) {
        for (int i = 0; i < each.size(); i++) {
            if (set.has(i) && each.get(i) == delivery) {
                return true;
            }
        }
        return false;
    }
}
