package rimeward.sim.check;

import java.util.Locale;
import java.util.Optional;
import rimeward.site.Site;

/**
 * P1. A bench below the floor is nobody's fault where the machines could not give what the air lost, where somebody let the cold in, or
 * where sensors lied: then, and for as long after as it takes to warm up again. Otherwise it is the law's.
 */
final class FloorRule implements Rule {
    /** An excuse holds on for this long, s: cold mass takes hours to warm. Own choice. */
    private static final long EXCUSED_S = 3 * 3600;

    private final Log log = new Log(Property.P1_FLOOR);
    private final double floorC;
    private long excusedLeftS;
    private boolean below;
    private boolean excused;

    FloorRule(Site site) {
        floorC = site.floorC();
    }

    @Override
    public void look(Facts now) {
        boolean tooWeak = now.ableW < now.lossW;
        excusedLeftS =
                tooWeak || now.disturbed || !now.sensorsTruthful ? EXCUSED_S : Math.max(0, excusedLeftS - now.lastsS);
        if (now.coldestC >= floorC) {
            below = false;
            return;
        }
        if (!below) {
            below = true;
            excused = excusedLeftS > 0; // judged as it crosses; what follows has the same cause
        }
        if (!excused) {
            log.found(now, () -> words(now));
        }
    }

    private String words(Facts now) {
        return String.format(
                Locale.ROOT,
                "the coldest bench was at %.2f °C, floor %.1f °C, while the air lost %.0f W and machines for %.0f W were in hand",
                now.coldestC,
                floorC,
                now.lossW,
                now.ableW);
    }

    @Override
    public Optional<Breach> breach() {
        return log.breach();
    }
}
