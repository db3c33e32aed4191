package rimeward.sim.check;

import java.util.Locale;
import java.util.Optional;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Site;

/** P6. After a fault of a machine or a relay, a gap ends as soon as the controller can have noticed. */
final class FailWarmRule implements Rule {
    /** With a meter on every heat source: a look at what it gives, s; and a dryer may have to wait for its next start. Own choice. */
    private static final long METERED_S = 60;

    /** Without, the air has to tell, s. Own choice. */
    private static final long UNMETERED_S = 1800;

    private final Log log = new Log(Property.P6_FAIL_WARM);
    private final GapRule gap;
    private final long noticeS;
    private long gapForS;

    FailWarmRule(Site site, GapRule gap) {
        this.gap = gap;
        boolean metered = site.machines().stream()
                .filter(machine -> machine.role().isHeatSource())
                .allMatch(Machine::hasPowerFeedback);
        double dryerWaitsS =
                site.drying() instanceof Drying.Dryer dryer ? dryer.machine().startSpacingS() : 0;
        noticeS = metered ? METERED_S + (long) dryerWaitsS : UNMETERED_S;
    }

    @Override
    public void look(Facts now) {
        gapForS = gap.isGap(now) ? gapForS + now.lastsS : 0;
        if (gapForS > noticeS && (now.machineFaulty || now.disturbed) && now.sensorsTruthful) {
            log.found(now, () -> words(now));
        }
    }

    private String words(Facts now) {
        return String.format(
                Locale.ROOT,
                "a machine had failed for %d s, the coldest bench was at %.2f °C, and no other was asked",
                gapForS,
                now.coldestC);
    }

    @Override
    public Optional<Breach> breach() {
        return log.breach();
    }
}
