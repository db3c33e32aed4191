package rimeward.core.tunnel;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Air and mass as two nodes in quarters of an hour, of which only the air is seen; the mass, and the sun by day, are followed by a Kalman
 * filter. After Bacher &amp; Madsen, "Identifying suitable models for the heat dynamics of buildings", Energy and Buildings 43 (2011)
 * 1511–1522: their model with two states, interior and medium, its noise and its likelihood. Nobody measures the sun here, so it is a third
 * state that wanders by day and is nothing in the dark: what it leaves in the mass is what comes back at night.
 *
 * <p>The outside is constant within a quarter and the machines' heat within a minute, so the step is exact: a heater that comes and goes
 * every few minutes would otherwise look like air that hardly answers.
 */
public final class GreyBox {
    /** How far the mass may be from the air as a stretch begins, K. Own choice: after a sunny day it is warmer by that. */
    private static final double MASS_APART_K = 4;

    /** What an open door or a fan may do to the air in a quarter, K. Own choice. */
    private static final double AIRED_K = 3;

    private static final double LN_2PI = StrictMath.log(2 * StrictMath.PI);

    /**
     * What is to be known.
     *
     * @param massLossWPerK what the mass loses to outside past the air: long-wave to film and sky, and by evaporation
     * @param skyK how much colder than its air the outside is for the tunnel, because of the sky, K
     * @param sunOnMass share of the sun that the mass takes, the rest the air
     * @param sunStepW how far the sun's heat wanders in a quarter of an hour by day, W
     * @param airNoiseK what shakes the air in a quarter of an hour besides, K
     * @param massNoiseK the same of the mass, K
     * @param readNoiseK noise of the benches' mean, K
     */
    record Numbers(
            double airLossWPerK,
            double massLossWPerK,
            double massCouplingWPerK,
            double airCapacityJPerK,
            double massCapacityJPerK,
            double groundW,
            double skyK,
            double dryerYield,
            double sunOnMass,
            double sunStepW,
            double airNoiseK,
            double massNoiseK,
            double readNoiseK) {}

    private final Numbers is;

    // x' = f x + g u, with x = (air, mass) and u = heat into (air, mass), W: the outside's part is in the air's
    private final double fAirAir;
    private final double fAirMass;
    private final double fMassAir;
    private final double fMassMass;
    private final double gAirAir;
    private final double gAirMass;
    private final double gMassAir;
    private final double gMassMass;
    private final double[] heatAir = new double[Stretch.MINUTES]; // K/W of the air at the quarter's end
    private final double[] heatMass = new double[Stretch.MINUTES];
    private final double sunAir;
    private final double sunMass;

    GreyBox(Numbers numbers) {
        is = numbers;
        double air = 1 / is.airCapacityJPerK;
        double mass = 1 / is.massCapacityJPerK;
        double aAirAir = -(is.airLossWPerK + is.massCouplingWPerK) * air;
        double aAirMass = is.massCouplingWPerK * air;
        double aMassAir = is.massCouplingWPerK * mass;
        double aMassMass = -(is.massCouplingWPerK + is.massLossWPerK) * mass;
        // e^(A t) of a 2 x 2 with two real eigenvalues s ± q: e^(s t) (cosh(q t) I + sinh(q t)/q (A − s I))
        double s = (aAirAir + aMassMass) / 2;
        double half = (aAirAir - aMassMass) / 2;
        double q = StrictMath.sqrt(half * half + aAirMass * aMassAir);
        double det = aAirAir * aMassMass - aAirMass * aMassAir;
        double beforeAir = 0; // K/W: what heat into the air since that moment has done by the end
        double beforeMass = 0;
        double[] f = new double[4];
        double[] g = new double[4];
        for (int minute = Stretch.MINUTES - 1; minute >= 0; minute--) {
            double t = Stretch.QUARTER_S * (Stretch.MINUTES - minute) / (double) Stretch.MINUTES;
            double slow = StrictMath.exp((s + q) * t);
            double quick = StrictMath.exp((s - q) * t);
            double c = (slow + quick) / 2;
            double h = (slow - quick) / (2 * q);
            f = new double[] {c + h * half, h * aAirMass, h * aMassAir, c - h * half};
            // the integral of e^(A t) is A^-1 (e^(A t) − I)
            g = new double[] {
                (aMassMass * (f[0] - 1) - aAirMass * f[2]) / det * air,
                (aMassMass * f[1] - aAirMass * (f[3] - 1)) / det * mass,
                (aAirAir * f[2] - aMassAir * (f[0] - 1)) / det * air,
                (aAirAir * (f[3] - 1) - aMassAir * f[1]) / det * mass
            };
            heatAir[minute] = g[0] - beforeAir;
            heatMass[minute] = g[2] - beforeMass;
            beforeAir = g[0];
            beforeMass = g[2];
        }
        fAirAir = f[0];
        fAirMass = f[1];
        fMassAir = f[2];
        fMassMass = f[3];
        gAirAir = g[0];
        gAirMass = g[1];
        gMassAir = g[2];
        gMassMass = g[3];
        sunAir = gAirAir * (1 - is.sunOnMass) + gAirMass * is.sunOnMass;
        sunMass = gMassAir * (1 - is.sunOnMass) + gMassMass * is.sunOnMass;
    }

    Numbers numbers() {
        return is;
    }

    private double intoAirW(Stretch.Quarter quarter) {
        return is.airLossWPerK * (quarter.outsideC() - is.skyK);
    }

    /** What the machines' heat of each minute has done at the quarter's end. */
    private double byHeat(double[] shares, Stretch.Quarter quarter) {
        double sum = 0;
        for (int minute = 0; minute < Stretch.MINUTES; minute++) {
            sum += shares[minute]
                    * (quarter.heaterW().get(minute)
                            + is.dryerYield * quarter.dryerW().get(minute));
        }
        return sum;
    }

    private double intoMassW(Stretch.Quarter quarter) {
        return is.massLossWPerK * (quarter.outsideC() - is.skyK) + is.groundW;
    }

    /** What the filter holds to be so. For one thread. */
    private final class Filter {
        private double airC;
        private double massC;
        private double sunW;
        private double pAir;
        private double pAirMass;
        private double pAirSun;
        private double pMass;
        private double pMassSun;
        private double pSun;
        private double variance;
        private double missedK;

        Filter(double startAirC) {
            airC = startAirC;
            massC = startAirC;
            double readVar = is.readNoiseK * is.readNoiseK;
            pAir = readVar;
            pAirMass = readVar;
            pMass = readVar + MASS_APART_K * MASS_APART_K;
        }

        /** To the end of a quarter, by what came in. */
        void predict(Stretch.Quarter quarter) {
            if (quarter.dark()) {
                sunW = 0;
                pSun = 0;
                pAirSun = 0;
                pMassSun = 0;
            } else {
                pSun += is.sunStepW * is.sunStepW;
            }
            double intoW = intoAirW(quarter);
            double massW = intoMassW(quarter);
            double thenAirC = fAirAir * airC
                    + fAirMass * massC
                    + gAirAir * intoW
                    + gAirMass * massW
                    + sunAir * sunW
                    + byHeat(heatAir, quarter);
            massC = fMassAir * airC
                    + fMassMass * massC
                    + gMassAir * intoW
                    + gMassMass * massW
                    + sunMass * sunW
                    + byHeat(heatMass, quarter);
            airC = thenAirC;
            double airAir = fAirAir * pAir + fAirMass * pAirMass + sunAir * pAirSun;
            double airMass = fAirAir * pAirMass + fAirMass * pMass + sunAir * pMassSun;
            double airSun = fAirAir * pAirSun + fAirMass * pMassSun + sunAir * pSun;
            double massAir = fMassAir * pAir + fMassMass * pAirMass + sunMass * pAirSun;
            double massMass = fMassAir * pAirMass + fMassMass * pMass + sunMass * pMassSun;
            double massSun = fMassAir * pAirSun + fMassMass * pMassSun + sunMass * pSun;
            double airNoiseK = quarter.shut() ? is.airNoiseK : AIRED_K;
            pAir = airAir * fAirAir + airMass * fAirMass + airSun * sunAir + airNoiseK * airNoiseK;
            pAirMass = airAir * fMassAir + airMass * fMassMass + airSun * sunMass;
            pMass = massAir * fMassAir + massMass * fMassMass + massSun * sunMass + is.massNoiseK * is.massNoiseK;
            pAirSun = airSun;
            pMassSun = massSun;
        }

        /** By what the benches showed then. */
        void correct(double readC) {
            variance = pAir + is.readNoiseK * is.readNoiseK;
            missedK = readC - airC;
            double gainAir = pAir / variance;
            double gainMass = pAirMass / variance;
            double gainSun = pAirSun / variance;
            airC += gainAir * missedK;
            massC += gainMass * missedK;
            sunW += gainSun * missedK;
            pMass -= gainMass * pAirMass;
            pMassSun -= gainMass * pAirSun;
            pSun -= gainSun * pAirSun;
            pAir *= 1 - gainAir;
            pAirMass *= 1 - gainAir;
            pAirSun *= 1 - gainAir;
        }

        /** Minus the logarithm of how likely the last reading was. */
        double surprise() {
            return 0.5 * (LN_2PI + StrictMath.log(variance) + missedK * missedK / variance);
        }
    }

    /**
     * Minus the logarithm of how likely a stretch's readings are, day by day.
     *
     * @param days is added to, from this place on; a stretch's day begins where the stretch does
     * @param place of its first day
     * @param innovations where what was not foreseen goes, in standard deviations; one for each quarter
     */
    void surprise(Stretch stretch, double[] days, int place, double @Nullable [] innovations) {
        Filter filter = new Filter(stretch.quarters().get(0).airC());
        for (int i = 1; i < stretch.quarters().size(); i++) {
            Stretch.Quarter quarter = stretch.quarters().get(i);
            filter.predict(quarter);
            filter.correct(quarter.airC());
            days[place + i / QUARTERS_A_DAY] += filter.surprise();
            if (innovations != null) {
                innovations[i] = filter.missedK / StrictMath.sqrt(filter.variance);
            }
        }
    }

    static final int QUARTERS_A_DAY = 96;

    /**
     * Lowest air, °C, that weather and machines make of the quarters after the first ones, whose readings are known.
     *
     * @param seen how many are known
     */
    public double lowestAirC(Stretch stretch, int seen) {
        List<Stretch.Quarter> quarters = stretch.quarters();
        Filter filter = new Filter(quarters.get(0).airC());
        for (int i = 1; i < seen; i++) {
            filter.predict(quarters.get(i));
            filter.correct(quarters.get(i).airC());
        }
        double lowestC = Double.POSITIVE_INFINITY;
        for (int i = seen; i < quarters.size(); i++) {
            filter.predict(quarters.get(i));
            lowestC = StrictMath.min(lowestC, filter.airC);
        }
        return lowestC;
    }
}
