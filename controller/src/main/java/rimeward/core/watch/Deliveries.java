package rimeward.core.watch;

import java.util.List;
import rimeward.site.RelaySet;

/**
 * What each machine is seen to do, in the site's order.
 *
 * @param failed heater stages that gave nothing when last they should have
 * @param failedLately those of them that nobody can have mended yet: no other machine need make room for them
 * @param dryerNotDrying whether the dryer has run for long without drying
 */
public record Deliveries(List<Delivery> each, RelaySet failed, RelaySet failedLately, boolean dryerNotDrying) {
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
