package rimeward.core.tunnel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Asks each night how much more or less than the learned tunnel it lost: the loss factor that makes its readings the likeliest, the rest of
 * the tunnel being as learned. The hours before dusk are followed too, because they leave their sun in the mass; but they are no evidence
 * themselves, for nobody measured that sun.
 */
final class LossNights {
    /** A shorter night says nothing. Own choice: six hours, quarters. */
    private static final int LEAST_QUARTERS = 24;

    /** So much of the time before dusk is followed. Own choice: a day, quarters. */
    private static final int RUN_IN_QUARTERS = 96;

    /** Only the end of a night is evidence: by then less is left of the sun. Own choice, from {@code LossBench}: eight hours, quarters. */
    private static final int EVIDENCE_QUARTERS = 32;

    /** Where machines gave a smaller share of what is lost, the mass and the ground gave it, and they are known less well. Own choice. */
    private static final double LEAST_HEAT_SHARE = 0.2;

    /** Factors beyond e to this are not looked for. Own choice: five times the loss. */
    private static final double FARTHEST = 1.6;

    private static final double STEP = 0.02;
    private static final double LONGEST_STRIDE = 0.3;
    private static final double CLOSE = 1e-4;
    private static final int MOST_STRIDES = 20;

    private final GreyBox.Numbers learned;

    LossNights(GreyBox.Numbers learned) {
        this.learned = learned;
    }

    /** The nights that are over and began later than a moment, the oldest first; those that say nothing are left out. */
    List<LossNight> after(long epochS, List<Stretch> stretches) {
        List<LossNight> all = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            boolean newest = i == stretches.size() - 1;
            List<Stretch.Quarter> quarters = stretch.quarters();
            int dusk = 0;
            while (dusk < quarters.size()) {
                int dawn = dusk;
                while (dawn < quarters.size() && quarters.get(dawn).dark()) {
                    dawn++;
                }
                boolean over = !newest || dawn < quarters.size();
                long beganS = stretch.startEpochS() + (long) dusk * Stretch.QUARTER_S;
                if (over && dawn - dusk >= LEAST_QUARTERS && beganS > epochS) {
                    night(stretch, dusk, dawn).ifPresent(all::add);
                }
                dusk = dawn + 1;
            }
        }
        return all;
    }

    private Optional<LossNight> night(Stretch stretch, int dusk, int dawn) {
        int from = Math.max(0, dusk - RUN_IN_QUARTERS);
        int evidence = Math.max(dusk, dawn - EVIDENCE_QUARTERS);
        if (!isHeated(stretch.quarters().subList(evidence, dawn))) {
            return Optional.empty();
        }
        Stretch whole = new Stretch(0, stretch.quarters().subList(from, dawn));
        Stretch before = new Stretch(0, stretch.quarters().subList(from, Math.max(from + 1, evidence)));
        double at = 0;
        for (int stride = 0; stride < MOST_STRIDES; stride++) { // Newton's
            double here = surprise(whole, before, at);
            double up = surprise(whole, before, at + STEP);
            double down = surprise(whole, before, at - STEP);
            double curvature = (up - 2 * here + down) / (STEP * STEP);
            double by = -(up - down) / (2 * STEP) / curvature;
            if (!(curvature > 0)) {
                return Optional.empty(); // too mild to tell anything
            }
            at += StrictMath.max(-LONGEST_STRIDE, StrictMath.min(LONGEST_STRIDE, by));
            if (StrictMath.abs(at) > FARTHEST) {
                return Optional.empty();
            }
            if (StrictMath.abs(by) < CLOSE) {
                long epochS = stretch.startEpochS() + (long) dusk * Stretch.QUARTER_S;
                return Optional.of(new LossNight(epochS, at, 1 / StrictMath.sqrt(curvature)));
            }
        }
        return Optional.empty();
    }

    private boolean isHeated(List<Stretch.Quarter> quarters) {
        double heatW = 0;
        double lossW = 0;
        for (Stretch.Quarter quarter : quarters) {
            for (int minute = 0; minute < Stretch.MINUTES; minute++) {
                heatW += (quarter.heaterW().get(minute)
                                + learned.dryerYield() * quarter.dryerW().get(minute))
                        / Stretch.MINUTES;
            }
            lossW += (learned.airLossWPerK() + learned.massLossWPerK())
                    * (quarter.airC() - quarter.outsideC() + learned.skyK());
        }
        return heatW > LEAST_HEAT_SHARE * lossW;
    }

    /** Minus the logarithm of how likely the night's readings are after what came before them. */
    private double surprise(Stretch whole, Stretch before, double logFactor) {
        GreyBox box = new GreyBox(BoxText.losing(learned, StrictMath.exp(logFactor)));
        return surprise(box, whole) - surprise(box, before);
    }

    private static double surprise(GreyBox box, Stretch stretch) {
        double[] days = new double[stretch.quarters().size() / GreyBox.QUARTERS_A_DAY + 1];
        box.surprise(stretch, days, 0, null);
        double sum = 0;
        for (double day : days) {
            sum += day;
        }
        return sum;
    }
}
