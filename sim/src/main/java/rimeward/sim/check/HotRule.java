package rimeward.sim.check;

import java.util.Locale;
import java.util.Optional;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** P5. No heat source is asked for while a bench is hotter than the limit, as far as truthful sensors can show it. */
final class HotRule implements Rule {
    /** Sensors lag and have a stated uncertainty: so far above the limit there is no doubt any more, K. Own choice. */
    private static final double BEYOND_DOUBT_K = 1.5;

    private final Log log = new Log(Property.P5_HOT);
    private final RelaySet sources;
    private final double limitC;

    HotRule(Site site) {
        sources = site.heaterStages().or(site.dryerRelay());
        limitC = site.targets().hotC();
    }

    @Override
    public void look(Facts now) {
        if (now.hottestC > limitC + BEYOND_DOUBT_K && now.sensorsTruthful && now.closed.meets(sources)) {
            log.found(
                    now,
                    () -> String.format(
                            Locale.ROOT,
                            "heat was asked for with a bench at %.1f °C, hot limit %.1f °C",
                            now.hottestC,
                            limitC));
        }
    }

    @Override
    public Optional<Breach> breach() {
        return log.breach();
    }
}
