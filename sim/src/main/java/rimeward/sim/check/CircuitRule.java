package rimeward.sim.check;

import java.util.Locale;
import java.util.Optional;
import rimeward.site.Drying;
import rimeward.site.Site;

/** P3. What is closed, and the dryer's fan while it runs on, never adds up to more than the circuit carries for hours. */
final class CircuitRule implements Rule {
    private static final double ROUNDING_W = 1e-6;

    private final Log log = new Log(Property.P3_CIRCUIT);
    private final Site site;
    private final double limitW;
    private final double fanW;

    CircuitRule(Site site) {
        this.site = site;
        limitW = site.circuit().limitW();
        fanW = site.drying() instanceof Drying.Dryer dryer ? dryer.fanW() : 0;
    }

    @Override
    public void look(Facts now) {
        if (now.closed.isEmpty()) {
            return;
        }
        double loadW = site.ratedW(now.closed) + (now.dryerRunsOn ? fanW : 0);
        if (loadW > limitW + ROUNDING_W) {
            log.found(now, () -> String.format(Locale.ROOT, "closed relays for %.0f W, limit %.0f W", loadW, limitW));
        }
    }

    @Override
    public Optional<Breach> breach() {
        return log.breach();
    }
}
