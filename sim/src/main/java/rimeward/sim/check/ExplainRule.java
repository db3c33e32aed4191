package rimeward.sim.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.core.decision.Reason;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * P8. Every switch has a reason, and the number it names is the one that was believed, which in turn is near the truth while sensors are
 * truthful.
 */
final class ExplainRule {
    private static final double ROUNDING = 1e-9;

    /** How far a truthful reading of the coldest bench may be from the truth, K: minutes of lag while a fan heater warms the air. Own choice. */
    private static final double NEAR_TRUTH_K = 6;

    private final Log log = new Log(Property.P8_EXPLAIN);
    private final Site site;
    private RelaySet was = RelaySet.none();

    ExplainRule(Site site) {
        this.site = site;
    }

    /** To be called when relays changed. */
    void switched(Facts now, List<Reason> reasons, Judgement believed) {
        RelaySet changed = now.closed.minus(was).or(was.minus(now.closed));
        was = now.closed;
        for (int i = 0; i < site.machines().size(); i++) {
            if (changed.has(i)) {
                judge(now, site.machines().get(i).id(), reasons.get(i), believed);
            }
        }
    }

    /** Relays fell by themselves, and nobody has to explain that. */
    void fell(Facts now) {
        was = now.closed;
    }

    private void judge(Facts now, String machine, Reason reason, Judgement believed) {
        OptionalDouble named = believedNumber(reason, believed);
        if (named.isPresent() && Math.abs(named.getAsDouble() - reason.measured()) > ROUNDING) {
            log.found(
                    now,
                    () -> words(machine, reason, String.format(Locale.ROOT, "believed was %.3f", named.getAsDouble())));
        }
        boolean ofColdest = isOfColdest(reason);
        if (ofColdest && now.sensorsTruthful && Math.abs(reason.measured() - now.coldestC) > NEAR_TRUTH_K) {
            log.found(
                    now,
                    () -> words(machine, reason, String.format(Locale.ROOT, "the truth was %.2f °C", now.coldestC)));
        }
    }

    private static String words(String machine, Reason reason, String but) {
        return machine + " switched because " + reason.sentence() + ", but " + but;
    }

    private static boolean isOfColdest(Reason reason) {
        return switch (reason.cause()) {
            case COLD,
                    WARM_ENOUGH,
                    HOLDING,
                    RESTING,
                    NOT_ENOUGH,
                    ENOUGH_WITHOUT,
                    NOT_FELT_YET,
                    LIFTED,
                    NO_GAP,
                    FLOOR_NEAR,
                    HEAT_LOST -> true;
            default -> false;
        };
    }

    /** What the controller believed of that which the reason's number measures, where that is a single reading. */
    private static OptionalDouble believedNumber(Reason reason, Judgement believed) {
        if (isOfColdest(reason)) {
            return believed.inside() instanceof Inside.Seen seen
                    ? OptionalDouble.of(seen.coldestC())
                    : OptionalDouble.empty();
        }
        return switch (reason.cause()) {
            case TOO_HOT ->
                believed.inside() instanceof Inside.Seen seen
                        ? OptionalDouble.of(seen.hottestC())
                        : OptionalDouble.empty();
            case TOO_COLD_FOR_DRYER ->
                believed.inside() instanceof Inside.Seen seen
                        ? OptionalDouble.of(seen.middleC())
                        : OptionalDouble.empty();
            default -> OptionalDouble.empty();
        };
    }

    Optional<Breach> breach() {
        return log.breach();
    }
}
