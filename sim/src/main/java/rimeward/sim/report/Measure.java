package rimeward.sim.report;

import java.util.function.ToDoubleFunction;
import rimeward.report.Say;
import rimeward.sim.run.RunResult;

/**
 * One line of the comparison.
 *
 * @param label a few words
 * @param unit of the number
 * @param says what it means, in a sentence without a full stop
 * @param better which way is better
 * @param decimals worth showing
 */
record Measure(String label, String unit, String says, Better better, int decimals, ToDoubleFunction<RunResult> value) {

    /** Which numbers are good. */
    enum Better {
        HIGHER,
        LOWER,
        /** Lower, among the laws that kept the plants safe: letting them freeze is always cheap. */
        LOWER_IF_SAFE,
        /** Neither: for information. */
        NEITHER
    }

    String text(RunResult result) {
        return Say.number(value.applyAsDouble(result), decimals);
    }
}
