package rimeward.alert;

import java.util.Locale;
import rimeward.core.Outcome;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.site.Degrees;

/**
 * Grey mould by hours of wetness W and their mean temperature T: ln(Y/(1 − Y)) = −2.647866 − 0.374927 W + 0.061601 W T −
 * 0.001511 W T² (Broome et al. 1995, for grapes; Y the share infected). It was measured from 12 °C up. Below, it would fall with
 * longer wetness, which no plant bears out, so 12 °C is reckoned with and the text says so.
 */
final class MouldWatch {
    private static final double MEASURED_FROM_C = 12;

    /** At or above this leaves are taken to be wet, %: common practice (Sentelhas et al. 2008, from memory). */
    private static final double WET_PERCENT = 90;

    /** Dry for so long, a spore's start is lost, s. From memory. */
    private static final double DRY_ENDS_S = 14_400;

    private static final double HOUR_S = 3600;

    private double wetS;
    private double meanC;
    private double drySinceS;

    /** At half infected, in wetness; cleared when dryness has ended it. Own choice. */
    boolean holds(Outcome outcome, double dtS) {
        if (outcome.judgement().damp() instanceof Damp.Seen damp
                && outcome.judgement().inside() instanceof Inside.Seen inside) {
            if (damp.wettestRhPercent() >= WET_PERCENT) {
                drySinceS = 0;
                wetS += dtS;
                meanC += wetS > 0 ? (inside.middleC() - meanC) * dtS / wetS : 0;
            } else {
                drySinceS += dtS;
            }
        }
        if (drySinceS >= DRY_ENDS_S) {
            wetS = 0;
            meanC = 0;
        }
        return logit(wetS / HOUR_S, StrictMath.max(MEASURED_FROM_C, meanC)) >= 0;
    }

    static double logit(double wetH, double airC) {
        return -2.647866 - 0.374927 * wetH + 0.061601 * wetH * airC - 0.001511 * wetH * airC * airC;
    }

    double wetS() {
        return wetS;
    }

    /** The mean begins anew and soon follows. */
    void resume(double beforeS) {
        wetS = beforeS;
        meanC = MEASURED_FROM_C;
    }

    String text(Degrees degrees) {
        String cold = meanC < MEASURED_FROM_C
                ? " The published curve begins at " + degrees.text(MEASURED_FROM_C)
                        + "; below, this is an extrapolation."
                : "";
        return String.format(
                        Locale.ROOT,
                        "Leaves have been wet for about %.0f hours at %s, by the damp air: grey mould can start.",
                        wetS / HOUR_S,
                        degrees.text(meanC))
                + cold + " Air or dry the tunnel, and take off dead leaves and flowers.";
    }
}
