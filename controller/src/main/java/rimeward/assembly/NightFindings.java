package rimeward.assembly;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Order;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LossStanding;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.planning.Findings;
import rimeward.port.Keep;
import rimeward.service.NightsAhead;
import rimeward.service.Restart;
import rimeward.site.Site;

/** Passes on what the planner finds: to control, to the record, and to whoever reads along. */
final class NightFindings implements Findings {
    /** A heat loss that is known no better than this is not controlled by, as a share. Own choice. */
    private static final double MOST_ERROR = 0.15;

    private final Site settings;
    private final Keep record;
    private final Audience audience;
    private final NightsAhead nights;
    private final Consumer<Order> control;
    private final Consumer<LossStanding> alerts;
    private @Nullable NightPlan newest;
    private @Nullable LocalDate told;

    NightFindings(
            Site settings,
            Keep record,
            Audience audience,
            NightsAhead nights,
            Consumer<Order> control,
            Consumer<LossStanding> alerts) {
        this.settings = settings;
        this.record = record;
        this.audience = audience;
        this.nights = nights;
        this.control = control;
        this.alerts = alerts;
    }

    @Override
    public void planned(NightPlan plan, Alternatives others) {
        newest = plan;
        audience.planned(plan, others);
    }

    @Override
    public void promised(PlanPromise promise) {
        record.keep(promise);
        NightPlan plan = newest;
        if (plan != null && !promise.evening().equals(told)) {
            told = promise.evening();
            audience.promised(plan);
        }
    }

    @Override
    public void learned(Lesson lesson) {
        audience.learned(lesson);
        if (lesson instanceof Lesson.Learned learned && isWellKnown(learned.estimate())) {
            TunnelEstimate tunnel = learned.estimate();
            control.accept(new Order.KnowTunnel(new KnownTunnel.Learned(
                    tunnel.heatLossWPerK().value(),
                    tunnel.airCapacityJPerK().value(),
                    tunnel.massCapacityJPerK().value(),
                    tunnel.massCouplingWPerK().value(),
                    tunnel.nights(),
                    Restart.tunnelMark(settings))));
        }
    }

    private static boolean isWellKnown(TunnelEstimate tunnel) {
        return tunnel.heatLossWPerK().standardError()
                <= MOST_ERROR * tunnel.heatLossWPerK().value();
    }

    @Override
    public void heatLoss(LossStanding standing) {
        alerts.accept(standing);
    }

    @Override
    public void expects(Course course, long nowEpochS) {
        nights.expect(course, nowEpochS);
    }

    @Override
    public void keeps(String name, String text) {
        record.keepLearned(name, text);
    }

    @Override
    public void reckoned(PastNight night) {
        record.keep(night);
        audience.reckoned(night);
    }

    @Override
    public void says(String line) {
        audience.says(line);
    }
}
