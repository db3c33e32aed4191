package rimeward.core.tunnel;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.special.Gamma;
import rimeward.site.Site;
import rimeward.site.Tunnel;

/**
 * Finds the tunnel that makes what was seen the most likely, beginning from what the settings assume: maximum a posteriori, which is
 * maximum likelihood with weak priors (Bacher &amp; Madsen 2011 for the model, see {@link GreyBox}).
 *
 * <p>Standard errors hold although wind and sky shake a night as a whole and not each quarter alone: they are the sandwich of White
 * (Econometrica 50, 1982), with the days as its independent parts.
 *
 * <p>What cannot be told apart is not claimed: a heater that gave less than its power would look like a tunnel that loses more, so the heater's
 * yield stays at 1; and where every night is about as cold, heat lost to the cold sky looks like heat lost for each kelvin, so heat loss is
 * told for the mean lift of the nights seen.
 */
public final class TunnelFit {
    /** Fewer days than this say too little. Own choice, from the bench. */
    public static final int LEAST_DAYS = 5;

    /** A shorter stretch is left out: the mass takes some of it to be known, quarters. Own choice: five hours. */
    private static final int LEAST_QUARTERS = 20;

    /** How far from the priors' middle is looked, in their standard deviations. */
    private static final double REACH = 5;

    /** So small a gain in likelihood, as its logarithm, is not worth another step: far less than any standard error. */
    private static final double WORTH = 0.01;

    private static final double STEP = 0.02;
    private static final int LAGS = 8;

    /** A heat loss that is known no better than this teaches nothing, as a share. Own choice. */
    private static final double MOST_ERROR = 0.3;

    /** Where machines gave a smaller share of what the settings say is lost, only guesses would be learned. Own choice. */
    private static final double LEAST_HEAT_SHARE = 0.2;

    private final List<Stretch> stretches;
    private final int days;
    private final double[] middle;
    private final double[] spread;
    private final Differences differences = new Differences(this::surprise, STEP);

    private TunnelFit(Site site, List<Stretch> stretches, int days) {
        this.stretches = stretches;
        this.days = days;
        Tunnel assumed = site.tunnel();
        double floorM2 = assumed.floorAreaM2();
        double[][] priors = { // middle, and how far the settings may be off: own choices
            {StrictMath.log(0.8 * assumed.heatLossWPerK()), 0.6},
            {StrictMath.log(0.2 * assumed.heatLossWPerK()), 0.7},
            {StrictMath.log(assumed.massCouplingWPerK()), 0.35},
            {StrictMath.log(assumed.airCapacityJPerK()), 0.35},
            {StrictMath.log(assumed.massCapacityJPerK()), 0.25},
            {floorM2, floorM2}, // soil in winter: 1 W/m², from none to 2
            {1, 1},
            {TunnelEstimate.assumed(site).dryerYield().value(), 0.3},
            {0.85, 0.4}, // logit: about 0.7 of the sun, from 0.6 to 0.8
            {StrictMath.log(250 * floorM2), 0.6},
            {StrictMath.log(150 * floorM2), 0.6},
            {StrictMath.log(2 * floorM2), 0.7},
            {StrictMath.log(0.15), 1},
            {StrictMath.log(0.05), 0.7}
        };
        middle = new double[priors.length];
        spread = new double[priors.length];
        for (int i = 0; i < priors.length; i++) {
            middle[i] = priors[i][0];
            spread[i] = priors[i][1];
        }
    }

    /** What stretches, the oldest first, teach of a tunnel, or why they do not. */
    public static Lesson of(Site site, List<Stretch> seen) {
        List<Stretch> whole = seen.stream()
                .filter(stretch -> stretch.quarters().size() >= LEAST_QUARTERS)
                .toList();
        int quarters =
                whole.stream().mapToInt(stretch -> stretch.quarters().size()).sum();
        int nights =
                (quarters + GreyBox.QUARTERS_A_DAY / 2) / GreyBox.QUARTERS_A_DAY; // a fortnight lacks its first quarter
        if (nights < LEAST_DAYS) {
            return new Lesson.TooFew(nights, LEAST_DAYS);
        }
        int days = whole.stream().mapToInt(TunnelFit::days).sum();
        return new TunnelFit(site, whole, days).learn(site, nights);
    }

    private static int days(Stretch stretch) {
        return (stretch.quarters().size() - 1) / GreyBox.QUARTERS_A_DAY + 1;
    }

    private Lesson learn(Site site, int nights) {
        double liftK = meanAtNight(quarter -> quarter.airC() - quarter.outsideC());
        double heatW = meanAtNight(quarter -> sum(quarter.heaterW()) + sum(quarter.dryerW())) / Stretch.MINUTES;
        if (!(heatW > LEAST_HEAT_SHARE * site.tunnel().heatLossWPerK() * liftK)) {
            return new Lesson.Unclear(nights, "heat was hardly needed; colder nights will tell");
        }
        double[] best = Descent.lowest(this::surprise, new double[middle.length], REACH, WORTH);
        GreyBox.Numbers found = numbers(best);
        RealMatrix covariance;
        try {
            covariance = covariance(best);
        } catch (MathRuntimeException e) {
            return new Lesson.Unclear(nights, "the nights are too alike to tell heat loss and mass apart");
        }
        Figure loss = figure(best, covariance, numbers -> lossWPerK(numbers, liftK));
        if (!(loss.standardError() < MOST_ERROR * loss.value())) { // written so that NaN is refused too
            return new Lesson.Unclear(nights, "these nights do not tell; colder and more different ones will");
        }
        TunnelEstimate assumed = TunnelEstimate.assumed(site);
        TunnelEstimate estimate = new TunnelEstimate(
                loss,
                figure(best, covariance, GreyBox.Numbers::massCouplingWPerK),
                figure(best, covariance, GreyBox.Numbers::airCapacityJPerK),
                figure(best, covariance, GreyBox.Numbers::massCapacityJPerK),
                figure(best, covariance, GreyBox.Numbers::groundW),
                assumed.heaterYield(),
                figure(best, covariance, GreyBox.Numbers::dryerYield),
                assumed.airExchangeKgPerS(),
                assumed.wettingKgPerS(),
                nights);
        GreyBox box = new GreyBox(found);
        return new Lesson.Learned(estimate, box, whiteness(box));
    }

    private double meanAtNight(ToDoubleFunction<Stretch.Quarter> what) {
        return stretches.stream()
                .flatMap(stretch -> stretch.quarters().stream())
                .filter(Stretch.Quarter::dark)
                .mapToDouble(what)
                .average()
                .orElse(0);
    }

    private static double sum(List<Double> minutesW) {
        double sum = 0;
        for (double powerW : minutesW) {
            sum += powerW;
        }
        return sum;
    }

    /** Lost in a steady state, the sky's and the ground's part shared out over the lift of these nights. */
    private static double lossWPerK(GreyBox.Numbers numbers, double liftK) {
        double skyK = numbers.skyK();
        double massLiftK = (numbers.massCouplingWPerK() * liftK - numbers.massLossWPerK() * skyK + numbers.groundW())
                / (numbers.massLossWPerK() + numbers.massCouplingWPerK());
        double lostW = numbers.airLossWPerK() * (liftK + skyK) + numbers.massLossWPerK() * (massLiftK + skyK);
        return lostW / liftK;
    }

    /** Something that follows from the parameters, its error to the first order. */
    private Figure figure(double[] at, RealMatrix covariance, ToDoubleFunction<GreyBox.Numbers> what) {
        double[] slopes = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double up = what.applyAsDouble(numbers(Differences.moved(at, i, STEP)));
            double down = what.applyAsDouble(numbers(Differences.moved(at, i, -STEP)));
            slopes[i] = (up - down) / (2 * STEP);
        }
        double[] carried = covariance.operate(slopes);
        double variance = 0;
        for (int i = 0; i < at.length; i++) {
            variance += slopes[i] * carried[i];
        }
        return new Figure(what.applyAsDouble(numbers(at)), StrictMath.sqrt(variance));
    }

    /** From scaled parameters, each counted in prior standard deviations from the prior's middle. */
    private GreyBox.Numbers numbers(double[] scaled) {
        double[] is = new double[scaled.length];
        for (int i = 0; i < is.length; i++) {
            is[i] = middle[i] + spread[i] * scaled[i];
        }
        return new GreyBox.Numbers(
                StrictMath.exp(is[0]),
                StrictMath.exp(is[1]),
                StrictMath.exp(is[2]),
                StrictMath.exp(is[3]),
                StrictMath.exp(is[4]),
                is[5],
                is[6],
                is[7],
                1 / (1 + StrictMath.exp(-is[8])),
                StrictMath.exp(is[9]),
                StrictMath.exp(is[10]),
                StrictMath.exp(is[11]),
                StrictMath.exp(is[12]),
                StrictMath.exp(is[13]));
    }

    /** How surprising each day is, and after them how far the parameters are from the priors. */
    private double[] surprises(double[] scaled) {
        GreyBox box = new GreyBox(numbers(scaled));
        double[] each = new double[days + 1];
        int place = 0;
        for (Stretch stretch : stretches) {
            box.surprise(stretch, each, place, null);
            place += days(stretch);
        }
        for (double parameter : scaled) {
            each[days] += parameter * parameter / 2;
        }
        return each;
    }

    private double surprise(double[] scaled) {
        double sum = 0;
        for (double each : surprises(scaled)) {
            sum += each;
        }
        return sum;
    }

    /** Of the scaled parameters: the sandwich, but nowhere surer than the model would be on its own. */
    private RealMatrix covariance(double[] at) {
        RealMatrix inverse =
                new LUDecomposition(differences.curvature(at)).getSolver().getInverse();
        double[][] pulls = new double[at.length][];
        for (int i = 0; i < at.length; i++) {
            double[] up = surprises(Differences.moved(at, i, STEP));
            double[] down = surprises(Differences.moved(at, i, -STEP));
            pulls[i] = new double[days];
            for (int day = 0; day < days; day++) {
                pulls[i][day] = (up[day] - down[day]) / (2 * STEP);
            }
        }
        RealMatrix meat = MatrixUtils.createRealMatrix(at.length, at.length);
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j < at.length; j++) {
                meat.setEntry(i, j, together(pulls[i], pulls[j]) * days / (days - 1.0));
            }
        }
        RealMatrix robust = inverse.multiply(meat).multiply(inverse);
        for (int i = 0; i < at.length; i++) {
            robust.setEntry(i, i, StrictMath.max(robust.getEntry(i, i), inverse.getEntry(i, i)));
        }
        return robust;
    }

    /** Sum over the days of the products of what is beside the mean. */
    private double together(double[] one, double[] other) {
        double sum = 0;
        double sumOne = 0;
        double sumOther = 0;
        for (int day = 0; day < days; day++) {
            sum += one[day] * other[day];
            sumOne += one[day];
            sumOther += other[day];
        }
        return sum - sumOne * sumOther / days;
    }

    /** Ljung &amp; Box (Biometrika 65, 1978) over all stretches together: small where what was not foreseen has a pattern. */
    private double whiteness(GreyBox box) {
        double[] products = new double[LAGS + 1];
        long count = 0;
        for (Stretch stretch : stretches) {
            double[] missed = new double[stretch.quarters().size()];
            box.surprise(stretch, new double[days], 0, missed);
            count += missed.length;
            for (int lag = 0; lag <= LAGS; lag++) {
                for (int i = lag; i < missed.length; i++) {
                    products[lag] += missed[i] * missed[i - lag];
                }
            }
        }
        double sum = 0;
        for (int lag = 1; lag <= LAGS; lag++) {
            double correlation = products[lag] / products[0];
            sum += correlation * correlation / (count - lag);
        }
        return Gamma.regularizedGammaQ(LAGS / 2.0, count * (count + 2.0) * sum / 2);
    }
}
