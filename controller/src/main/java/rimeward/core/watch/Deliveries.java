package rimeward.core.watch;

import java.util.List;
import rimeward.site.RelaySet;

/**
 * What each machine is seen to do, in the site's order.
 *
 * @param failed heater stages that gave nothing when last they should have
 * @param failedLately those of them that nobody can have mended yet: no other machine need make room for them
 * @param dryerInVain whether at this tick an hour ends in which the dryer was asked and did not dry
 * @param dryerNotDrying whether that was so when last it could be judged
 */
public record Deliveries(
        List<Delivery> each, RelaySet failed, RelaySet failedLately, boolean dryerInVain, boolean dryerNotDrying) {
    /** With nothing known of the dryer but this tick. */
    public Deliveries(List<Delivery> each, RelaySet failed, RelaySet failedLately, boolean dryerInVain) {
        this(each, failed, failedLately, dryerInVain, dryerInVain);
    }

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
