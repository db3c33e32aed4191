package rimeward.core.tunnel;

import java.util.function.ToDoubleFunction;

/**
 * Looks for the lowest point of something smooth without being told its slopes: quasi-Newton after Broyden, Fletcher, Goldfarb and Shanno
 * (Nocedal &amp; Wright, Numerical Optimization, 2nd ed., algorithm 6.1, from memory), slopes by central differences, steps halved until they
 * lead down far enough. For coordinates scaled so that 1 is a long way.
 */
final class Descent {
    private static final int MOST_STEPS = 120;
    private static final int MOST_HALVINGS = 25;
    private static final double SLOPE_STEP = 1e-3;
    private static final double LONGEST_STEP = 1.5;

    /** Armijo's: so much of what the slope promises is to be kept. */
    private static final double KEPT = 1e-4;

    /** As variance of a first guess: scaled parameters are far better known than their priors. */
    private static final double FIRST_GUESS = 0.05;

    private final ToDoubleFunction<double[]> height;
    private final double reach;
    private final int size;
    private final double[][] inverse;
    private double[] at;
    private double low;
    private double[] slope;

    private Descent(ToDoubleFunction<double[]> height, double[] from, double reach) {
        this.height = height;
        this.reach = reach;
        size = from.length;
        at = from.clone();
        low = height.applyAsDouble(at);
        slope = slope();
        inverse = new double[size][size];
        for (int i = 0; i < size; i++) {
            inverse[i][i] = FIRST_GUESS;
        }
    }

    /**
     * Where it is lowest, as far as going down from here tells.
     *
     * @param reach no coordinate goes farther from 0
     * @param worth a step that gains less is the last one
     */
    static double[] lowest(ToDoubleFunction<double[]> height, double[] from, double reach, double worth) {
        Descent descent = new Descent(height, from, reach);
        for (int step = 0; step < MOST_STEPS; step++) {
            double before = descent.low;
            if (!descent.step() || (step > 5 && before - descent.low < worth)) {
                break;
            }
        }
        return descent.at;
    }

    private boolean step() {
        double[] way = new double[size];
        double length = 0;
        for (int i = 0; i < size; i++) {
            way[i] = -dot(inverse[i], slope);
            length += way[i] * way[i];
        }
        double share = StrictMath.min(1, LONGEST_STEP / StrictMath.sqrt(length));
        double promised = dot(way, slope);
        for (int halving = 0; halving < MOST_HALVINGS; halving++) {
            double[] there = new double[size];
            for (int i = 0; i < size; i++) {
                there[i] = StrictMath.max(-reach, StrictMath.min(reach, at[i] + share * way[i]));
            }
            double height = this.height.applyAsDouble(there);
            if (height <= low + KEPT * share * promised) { // NaN is not
                arrive(there, height);
                return true;
            }
            share /= 2;
        }
        return false;
    }

    private void arrive(double[] there, double height) {
        double[] from = at;
        double[] before = slope;
        at = there;
        low = height;
        slope = slope();
        double[] gone = new double[size];
        double[] turned = new double[size];
        for (int i = 0; i < size; i++) {
            gone[i] = at[i] - from[i];
            turned[i] = slope[i] - before[i];
        }
        double along = dot(gone, turned);
        if (along > 0) { // otherwise it is no valley here, and the old guess stays
            learn(gone, turned, along);
        }
    }

    private void learn(double[] gone, double[] turned, double along) {
        double[] guessed = new double[size];
        for (int i = 0; i < size; i++) {
            guessed[i] = dot(inverse[i], turned);
        }
        double own = (1 + dot(guessed, turned) / along) / along;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                inverse[i][j] += own * gone[i] * gone[j] - (guessed[i] * gone[j] + gone[i] * guessed[j]) / along;
            }
        }
    }

    private double[] slope() {
        double[] slopes = new double[size];
        double[] near = at.clone();
        for (int i = 0; i < size; i++) {
            near[i] = at[i] + SLOPE_STEP;
            double up = height.applyAsDouble(near);
            near[i] = at[i] - SLOPE_STEP;
            slopes[i] = (up - height.applyAsDouble(near)) / (2 * SLOPE_STEP);
            near[i] = at[i];
        }
        return slopes;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
