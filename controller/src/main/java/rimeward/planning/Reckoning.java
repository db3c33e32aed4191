package rimeward.planning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.NightSpan;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanStart;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.port.Past;
import rimeward.record.Draw;
import rimeward.record.FrameRow;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * What a night took, from sunset to an hour after sunrise, beside what plainer ways would have taken of it by the model. Of a night with a
 * hole in its record nothing is claimed. For one use.
 */
final class Reckoning {
    private static final double J_PER_KWH = 3.6e6;
    private static final int NOON_H = 12;
    private static final long AFTER_SUNRISE_S = 3600;
    private static final long LOOK_S = 900;

    /** The record keeps a frame a minute; half an hour without one is a hole. Own choice. */
    private static final long HOLE_S = 1800;

    /** What the own sensor may be off, K. Own choice. */
    private static final double SENSOR_K = 0.3;

    private final Site site;
    private final long fromS;
    private final long untilS;
    private final List<FrameRow> rows = new ArrayList<>();
    private final List<Course.Step> steps = new ArrayList<>();
    private double kWh;
    private double cost;

    private Reckoning(Site site, NightSpan span) {
        this.site = site;
        fromS = span.sunsetEpochS();
        untilS = span.sunriseEpochS() + AFTER_SUNRISE_S;
    }

    /** Empty where the record does not show the whole night. */
    static Optional<PastNight> of(Past past, Site site, TunnelEstimate estimate, NightSpan span) {
        Reckoning night = new Reckoning(site, span);
        past.eachFrame(night.fromS * 1000, Long.MAX_VALUE, Integer.MAX_VALUE, night::add);
        return night.isWhole() ? night.beside(estimate) : Optional.empty();
    }

    private void add(FrameRow row) {
        if (!Evening.isOf(row, site) || epochS(row) > untilS) {
            return;
        }
        if (!rows.isEmpty()) {
            spend(rows.get(rows.size() - 1), row);
        }
        rows.add(row);
        boolean due =
                steps.isEmpty() || epochS(row) >= steps.get(steps.size() - 1).epochS() + LOOK_S;
        if (due && Outside.of(row, site) instanceof OutsideAir.Seen seen) {
            double dewC = seen.dewPointC().orElse(seen.airC());
            steps.add(new Course.Step(seen.epochS(), seen.airC(), SENSOR_K, Math.min(dewC, seen.airC())));
        }
    }

    private static long epochS(FrameRow row) {
        return row.frame().tick().wall().epochS();
    }

    private void spend(FrameRow before, FrameRow row) {
        long lastedS = Math.max(0, epochS(row) - epochS(before));
        double tookKWh = Draw.totalW(site, before.closed(), row.frame()) * lastedS / J_PER_KWH;
        kWh += tookKWh;
        ZonedDateTime local = Instant.ofEpochSecond(epochS(row)).atZone(site.zone());
        cost += tookKWh * site.tariff().pricePerKWh(local.getHour() * 60 + local.getMinute());
    }

    private boolean isWhole() {
        long lastS = fromS;
        for (Course.Step step : steps) {
            if (step.epochS() - lastS > HOLE_S) {
                return false;
            }
            lastS = step.epochS();
        }
        return untilS - lastS <= HOLE_S && rows.stream().allMatch(row -> row.outageS() == 0);
    }

    private Optional<PastNight> beside(TunnelEstimate estimate) {
        FrameRow first = rows.get(0);
        Evening evening = Evening.of(rows, first, site, RelaySet.none());
        Optional<PlanStart> start = evening.start();
        if (start.isEmpty()) {
            return Optional.empty();
        }
        Course course = new Course(new Course.Basis.Forecasted("the own sensor", fromS, 0), steps);
        Alternatives others = Alternatives.past(site, estimate, course, start.get(), evening.choices(), kWh, cost);
        return Optional.of(new PastNight(evening(), kWh, cost, others));
    }

    private LocalDate evening() {
        ZonedDateTime local = Instant.ofEpochSecond(fromS).atZone(site.zone());
        return local.getHour() >= NOON_H
                ? local.toLocalDate()
                : local.toLocalDate().minusDays(1);
    }
}
