package rimeward.alert;

import java.util.Locale;
import rimeward.core.Outcome;
import rimeward.core.watch.Delivery;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Water in the dryer's tank, by its running time at its rated collection: rather too much in cold air. It counts from the emptying:
 * seen by the float, or told by acknowledging the alert.
 */
final class TankWatch {
    /** Of the tank. Own choice: with an eighth left the evening's round is not too late. */
    private static final double NEARLY = 0.85;

    private static final double HOUR_S = 3600;

    private double ranS;
    private boolean wasFull;

    boolean holds(Site site, Outcome outcome, double dtS) {
        if (!(site.drying() instanceof Drying.Dryer dryer) || Double.isInfinite(dryer.tankL())) {
            return false;
        }
        boolean full = outcome.judgement().tankFull();
        ranS = wasFull && !full ? 0 : ranS + (isRunning(site, outcome) ? dtS : 0);
        wasFull = full;
        return !full && litres(dryer) >= NEARLY * dryer.tankL();
    }

    private static boolean isRunning(Site site, Outcome outcome) {
        RelaySet dryer = site.dryerRelay();
        return outcome.deliveries().any(dryer, Delivery.GIVING)
                || outcome.deliveries().any(dryer, Delivery.UNSEEN);
    }

    private double litres(Drying.Dryer dryer) {
        return ranS * dryer.collectionLPerH() / HOUR_S;
    }

    void emptied() {
        ranS = 0;
    }

    double ranS() {
        return ranS;
    }

    void resume(double beforeS) {
        ranS = beforeS;
    }

    String text(Site site) {
        if (!(site.drying() instanceof Drying.Dryer dryer)) {
            return "There is no dryer any more.";
        }
        double leftH = StrictMath.max(0, dryer.tankL() - litres(dryer)) / dryer.collectionLPerH();
        return String.format(
                Locale.ROOT,
                "By the dryer's running time there are at most %.1f L of %.1f L in its tank; it lasts at least %.1f more hours of"
                        + " running. Empty it before the night, then acknowledge this: it counts from there.",
                StrictMath.min(litres(dryer), dryer.tankL()),
                dryer.tankL(),
                leftH);
    }
}
