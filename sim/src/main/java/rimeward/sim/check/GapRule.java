package rimeward.sim.check;

import java.util.Locale;
import java.util.Optional;
import rimeward.site.Site;

/**
 * P2, and the gap time of the tables: the coldest bench is within the guard margin of the floor, heat is in hand, and nobody gives it.
 * The time counts whatever the cause; the property is broken only while machines are sound, sensors truthful and doors shut. What follows
 * a fault is for {@link FailWarmRule}.
 */
final class GapRule implements Rule {
    private final Log log = new Log(Property.P2_NO_GAP);
    private final double limitC;
    private long gapS;

    GapRule(Site site) {
        limitC = site.floorC() + site.targets().guardMarginK();
    }

    boolean isNeeded(Facts now) {
        return now.coldestC <= limitC;
    }

    boolean isGap(Facts now) {
        return now.coldestC <= limitC && now.hasCapacity() && !now.isHeld();
    }

    @Override
    public void look(Facts now) {
        if (!isGap(now)) {
            return;
        }
        gapS += now.lastsS;
        if (now.sensorsTruthful && !now.machineFaulty && !now.disturbed) {
            log.found(now, () -> words(now));
        }
    }

    private String words(Facts now) {
        return String.format(
                Locale.ROOT,
                "the coldest bench was at %.2f °C, within the guard margin (%.2f °C), and nobody gave heat",
                now.coldestC,
                limitC);
    }

    long gapS() {
        return gapS;
    }

    @Override
    public Optional<Breach> breach() {
        return log.breach();
    }
}
