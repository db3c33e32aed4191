package rimeward.core.watch;

import java.util.Collections;
import java.util.List;
import rimeward.site.RelaySet;

/**
 * What the watch must not forget when the program ends: a machine that has failed is not mended by that.
 *
 * @param failed heater stages that gave nothing when last they should have
 * @param sinceS how long ago that was seen, s; one for each machine, 0 for the others
 * @param dryerNotDrying whether the dryer was asked for an hour and did not dry
 * @param dryerUnaskedS how long it has not been asked since, s
 */
public record Failures(RelaySet failed, List<Double> sinceS, boolean dryerNotDrying, double dryerUnaskedS) {
    public Failures {
        sinceS = List.copyOf(sinceS);
    }

    /** None, of so many machines. */
    public static Failures none(int machines) {
        return new Failures(RelaySet.none(), Collections.nCopies(machines, 0.0), false, 0);
    }
}
