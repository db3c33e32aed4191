package rimeward.core.tunnel;

import java.util.List;
import java.util.function.DoubleConsumer;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.air.Saturation;
import rimeward.site.Drying;
import rimeward.site.Site;

/**
 * Finds the exchange of air and the wetting that make the damp of the dark hours the likeliest: the balance of {@link TunnelEstimate} is
 * stepped through each night from its first quarter, with weak priors around what is assumed (maximum a posteriori), and quarters far off
 * count linearly (Huber, Annals of Mathematical Statistics 35, 1964).
 *
 * <p>How damp it is tells how one of the two stands to the other. How large both are only a dryer tells, by what it is taken to collect,
 * and how fast the damp follows a change; without them both stay near what is assumed. What settles on the film is not in the
 * balance: quarters near saturation are left out.
 *
 * <p>The mass is as warm as the plan would have it. The true one radiates to the cover and is colder by a kelvin or three, so the wetting that
 * is found is smaller than the true one: it is what makes the plan's damp right, not a property of pots.
 */
public final class MoistureFit {
    /** Fewer dark quarters say too little. Own choice: five nights of ten hours. */
    public static final int LEAST_QUARTERS = 200;

    private static final int EXCHANGE = 0;
    private static final int WETTING = 1;

    /** How much damper the sensors inside read than the one outside, as a logarithm. */
    private static final int OFFSET = 2;

    private static final int PARAMETERS = 3;

    /** How far each may be off, as a logarithm. Own choices: a factor of two is no wonder; two sensors within 3 % each. */
    private static final double[] PRIOR_SPREADS = {0.7, 0.7, 0.02};

    /** How far the damp of a quarter may be off, as a share. Own choice. */
    private static final double READ_SHARE = 0.05;

    /** Quarters whose errors are taken to be one: sensors' offsets last. Own choice: three hours. */
    private static final double ALIKE = 12;

    /** Quarters farther off than so many deviations count linearly. */
    private static final double HUBER = 1.5;

    /** At more of saturation water may settle on the film, as a share. Own choice. */
    private static final double MOST_SATURATED = 0.93;

    /** Known no better than this, the ratio of the two teaches nothing, as a logarithm. Own choice. */
    private static final double MOST_ERROR = 0.35;

    /** The mass is not known so soon after a hole, quarters. Own choice: six hours. */
    private static final int RUN_IN = 24;

    private static final Moisture UNCLEAR = new Moisture.Unclear("these nights do not tell exchange and wetting apart");

    /** A dryer is taken to collect in proportion to the humidity ratio, as the plan does. Own choice. */
    private static final double RATED_C = 10;

    private static final double RATED_PERCENT = 80;
    private static final double STEP = 0.02;
    private static final int MOST_STRIDES = 25;
    private static final double STUCK = 1e4; // at the bottom nothing is lower, and it is held back more and more

    private final TunnelEstimate estimate;
    private final List<DampQuarter> quarters;
    private final double pressurePa;
    private final double keptKgPerS;
    private final double ratedKgPerS;
    private final Differences differences = new Differences(this::surprise, STEP);

    private MoistureFit(Site site, TunnelEstimate estimate, List<DampQuarter> quarters) {
        this.estimate = estimate;
        this.quarters = quarters;
        pressurePa = MoistAir.pressurePa(site.tunnel().altitudeM());
        keptKgPerS =
                site.tunnel().volumeM3() * MoistAir.densityKgPerM3(site.floorC(), 0, pressurePa) / Stretch.QUARTER_S;
        double ratedKgPerKg = MoistAir.humidityRatioKgPerKg(
                RelativeHumidity.vapourFromOverWaterPa(RATED_C, RATED_PERCENT), pressurePa);
        ratedKgPerS = site.drying() instanceof Drying.Dryer dryer ? dryer.collectionLPerH() / 3600 / ratedKgPerKg : 0;
    }

    /**
     * What quarters, the oldest first, teach.
     *
     * @param estimate the tunnel's heat, learned or assumed: it says how warm the mass is; its damp is where the search begins
     */
    public static Moisture of(Site site, TunnelEstimate estimate, List<DampQuarter> quarters) {
        return new MoistureFit(site, estimate, quarters).learn();
    }

    /**
     * How far the damp of dark hours is from what a tunnel would have made of their start, their air and their dryer: root of the mean square,
     * as a share. Not a number where there is no such hour.
     */
    public static double missedShare(Site site, TunnelEstimate estimate, List<DampQuarter> quarters) {
        double[] sum = new double[2];
        new MoistureFit(site, estimate, quarters).walk(new double[PARAMETERS], share -> {
            sum[0] += share * share;
            sum[1]++;
        });
        return StrictMath.sqrt(sum[0] / sum[1]);
    }

    private Moisture learn() {
        if (evidence() < LEAST_QUARTERS) {
            return new Moisture.Unclear("too few dark hours in which humidity was known inside and outside");
        }
        try {
            return told(optimum());
        } catch (MathRuntimeException e) {
            return UNCLEAR;
        }
    }

    /** Newton's way down, held back where it would overshoot (Levenberg). */
    private double[] optimum() {
        double[] at = new double[PARAMETERS];
        double here = surprise(at);
        double damping = 0.1;
        for (int stride = 0; stride < MOST_STRIDES && damping < STUCK; stride++) {
            RealMatrix held = differences
                    .curvature(at)
                    .add(MatrixUtils.createRealIdentityMatrix(PARAMETERS).scalarMultiply(damping));
            double[] back = new LUDecomposition(held).getSolver().getInverse().operate(differences.slopes(at));
            double[] next = at.clone();
            for (int i = 0; i < PARAMETERS; i++) {
                next[i] -= back[i];
            }
            double there = surprise(next);
            boolean lower = there < here;
            at = lower ? next : at;
            here = lower ? there : here;
            damping *= lower ? 0.25 : 8;
        }
        return at;
    }

    private Moisture told(double[] at) {
        RealMatrix covariance =
                new LUDecomposition(differences.curvature(at)).getSolver().getInverse();
        double exchange = covariance.getEntry(EXCHANGE, EXCHANGE);
        double wetting = covariance.getEntry(WETTING, WETTING);
        double ratio = StrictMath.sqrt(exchange + wetting - 2 * covariance.getEntry(EXCHANGE, WETTING));
        if (!(exchange > 0 && wetting > 0 && ratio < MOST_ERROR)) { // written so that NaN is refused too
            return UNCLEAR;
        }
        double exchangeKgPerS = exchangeKgPerS(at);
        double wettingKgPerS = wettingKgPerS(at);
        return new Moisture.Learned(
                new Figure(exchangeKgPerS, exchangeKgPerS * StrictMath.sqrt(exchange)),
                new Figure(wettingKgPerS, wettingKgPerS * StrictMath.sqrt(wetting)),
                ratio);
    }

    private double exchangeKgPerS(double[] at) {
        return estimate.airExchangeKgPerS().value() * StrictMath.exp(at[EXCHANGE]);
    }

    private double wettingKgPerS(double[] at) {
        return estimate.wettingKgPerS().value() * StrictMath.exp(at[WETTING]);
    }

    private long evidence() {
        return quarters.stream().filter(this::counts).count();
    }

    private boolean counts(DampQuarter quarter) {
        return quarter.dark()
                && quarter.shut()
                && quarter.humidityKgPerKg() < MOST_SATURATED * saturatedKgPerKg(quarter.airC());
    }

    /** How surprising the nights are with these parameters, and the parameters themselves. */
    private double surprise(double[] at) {
        double[] sum = new double[1];
        for (int i = 0; i < PARAMETERS; i++) {
            sum[0] += at[i] * at[i] / (2 * PRIOR_SPREADS[i] * PRIOR_SPREADS[i]);
        }
        walk(at, share -> sum[0] += huber(share / READ_SHARE) / ALIKE);
        return sum[0];
    }

    /** Steps through the nights; each dark quarter after a night's first says by which share the damp was off. */
    private void walk(double[] at, DoubleConsumer off) {
        double exchangeKgPerS = exchangeKgPerS(at);
        double wettingKgPerS = wettingKgPerS(at);
        double reads = StrictMath.exp(at[OFFSET]);
        double massC = 0;
        double humidity = 0;
        long nextEpochS = Long.MIN_VALUE;
        int since = 0;
        boolean follows = false;
        for (DampQuarter quarter : quarters) {
            boolean hole = quarter.epochS() != nextEpochS;
            nextEpochS = quarter.epochS() + Stretch.QUARTER_S;
            since = hole ? 0 : since + 1;
            massC = hole ? quarter.airC() : massAfterC(massC, quarter.airC());
            boolean usable = since >= RUN_IN && counts(quarter);
            if (usable && follows) {
                double outKgPerS = wettingKgPerS + exchangeKgPerS + ratedKgPerS * quarter.dryerShare();
                double balanced = (wettingKgPerS * saturatedKgPerKg(massC) + exchangeKgPerS * quarter.outsideKgPerKg())
                        / outKgPerS;
                double turns = outKgPerS / keptKgPerS; // how often the quarter would carry all vapour away
                double fades = StrictMath.exp(-turns);
                double mean = balanced + (humidity - balanced) * (1 - fades) / turns;
                humidity = balanced + (humidity - balanced) * fades;
                off.accept(mean * reads / quarter.humidityKgPerKg() - 1);
            } else {
                humidity = quarter.humidityKgPerKg() / reads;
            }
            follows = usable;
        }
    }

    private static double huber(double deviations) {
        double far = StrictMath.abs(deviations);
        return far <= HUBER ? far * far / 2 : HUBER * (far - HUBER / 2);
    }

    private double massAfterC(double massC, double airC) {
        double keeps = estimate.massCapacityJPerK().value() / Stretch.QUARTER_S;
        double coupling = estimate.massCouplingWPerK().value();
        return (keeps * massC + coupling * airC + estimate.groundW().value()) / (keeps + coupling);
    }

    private double saturatedKgPerKg(double atC) {
        return MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(atC), pressurePa);
    }
}
