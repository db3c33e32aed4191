package rimeward.map.planted.core.decision;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/** Faults: functions that the processor may answer in its own way. */
public final class UsesFastMath {
    private final DoubleUnaryOperator sine = Math::sin;

    public double high(double x, SplittableRandom stream) {
        return Math.exp(x) + Math.pow(x, 1.5) + sine.applyAsDouble(x) + stream.nextGaussian();
    }
}
