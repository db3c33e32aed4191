package rimeward.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rimeward.core.Outcome;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Outside;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Delivery;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Sums every tick of a night. Owned by one thread, the control loop's. A clock that the network has not set begins no night;
 * one that is set back goes on in the night it was in.
 */
public final class NightTally {
    private static final double J_PER_KWH = 3.6e6;
    private static final int NOON_H = 12;

    private final Site site;
    private final ZoneId zone;
    private final double[] kWh;
    private final int[] starts;
    private @Nullable LocalDate evening; // until the time of day is known
    private Lowest bench = new Lowest.Unseen();
    private Lowest outside = new Lowest.Unseen();
    private double seenS;
    private double wetS;
    private double cost;
    private double litres;
    private int alerts;
    private long lastMs = -1;
    private RelaySet closed = RelaySet.none();
    private long nextNoonMs = Long.MIN_VALUE;

    public NightTally(Site site, ZoneId zone) {
        this.site = site;
        this.zone = zone;
        kWh = new double[site.machines().size()];
        starts = new int[kWh.length];
    }

    /** Goes on in a night that an earlier run began; machines that are no longer there are left out. */
    public void resume(Night night) {
        clear(night.evening());
        bench = night.bench();
        outside = night.outside();
        seenS = night.seenS();
        wetS = night.wetS();
        cost = night.cost();
        litres = night.litresEstimated();
        alerts = night.alerts();
        for (Night.Use use : night.machines()) {
            for (int i = 0; i < kWh.length; i++) {
                if (site.machines().get(i).id().equals(use.machine())) {
                    kWh[i] = use.kWh();
                    starts[i] = use.starts();
                }
            }
        }
    }

    /** Takes one tick; gives the night that it ended, if it did. */
    public Optional<Night> add(Outcome outcome, int raised) {
        Tick tick = outcome.frame().tick();
        Optional<Night> ended = roll(tick.wall());
        double dtS = lastMs < 0 || outcome.outageS() > 0 ? 0 : StrictMath.max(0, tick.elapsedMs() - lastMs) / 1000.0;
        lastMs = tick.elapsedMs();
        closed = outcome.outageS() > 0 ? RelaySet.none() : closed;
        energy(outcome, dtS);
        air(outcome, dtS);
        alerts += raised;
        countStarts(outcome.guarded().closed());
        return ended;
    }

    /** The night that goes on, once the time of day has been known. */
    public Optional<Night> open() {
        return Optional.ofNullable(evening).map(this::night);
    }

    private Optional<Night> roll(WallTime wall) {
        if (!wall.trusted() || wall.epochMs() < nextNoonMs) {
            return Optional.empty();
        }
        LocalDate now = eveningOf(wall.epochMs());
        if (evening != null && !now.isAfter(evening)) {
            nextNoonMs = noonAfter(evening);
            return Optional.empty();
        }
        Optional<Night> ended = open();
        clear(now);
        return ended;
    }

    private LocalDate eveningOf(long epochMs) {
        ZonedDateTime local = Instant.ofEpochMilli(epochMs).atZone(zone);
        return local.getHour() >= NOON_H
                ? local.toLocalDate()
                : local.toLocalDate().minusDays(1);
    }

    private long noonAfter(LocalDate evening) {
        return evening.plusDays(1)
                .atTime(LocalTime.NOON)
                .atZone(zone)
                .toInstant()
                .toEpochMilli();
    }

    private void clear(LocalDate begun) {
        evening = begun;
        nextNoonMs = noonAfter(begun);
        bench = new Lowest.Unseen();
        outside = new Lowest.Unseen();
        seenS = 0;
        wetS = 0;
        cost = 0;
        litres = 0;
        alerts = 0;
        Arrays.fill(kWh, 0);
        Arrays.fill(starts, 0);
    }

    /** What was closed since the last tick drew what its meter shows now, or what its plate says. */
    private void energy(Outcome outcome, double dtS) {
        double spentKWh = 0;
        for (int i = 0; i < kWh.length; i++) {
            double tookKWh = Draw.powerW(site, closed, outcome.frame(), i) * dtS / J_PER_KWH;
            kWh[i] += tookKWh;
            spentKWh += tookKWh;
        }
        if (spentKWh != 0) {
            cost += spentKWh
                    * site.tariff()
                            .pricePerKWh(minuteOfDay(outcome.frame().tick().wall()));
        }
        if (site.drying() instanceof Drying.Dryer dryer && dries(outcome)) {
            litres += dryer.collectionLPerH() * dtS / 3600;
        }
    }

    private boolean dries(Outcome outcome) {
        return closed.meets(site.dryerRelay())
                && !outcome.deliveries().dryerNotDrying()
                && !outcome.deliveries().any(site.dryerRelay(), Delivery.NOT_GIVING);
    }

    private int minuteOfDay(WallTime wall) {
        ZonedDateTime local = Instant.ofEpochMilli(wall.epochMs()).atZone(zone);
        return local.getHour() * 60 + local.getMinute();
    }

    private void air(Outcome outcome, double dtS) {
        seenS += dtS;
        var judgement = outcome.judgement();
        for (int i = 0; i < site.sensors().size(); i++) {
            Reading airC = outcome.frame().senses().sensors().get(i).airC();
            if (site.sensors().get(i).place().isInside()
                    && judgement.airVerdicts().get(i).isTrusted()
                    && airC instanceof Reading.Value value) {
                bench = Lowest.of(bench, value.value());
            }
        }
        if (judgement.outside() instanceof Outside.Seen seen) {
            outside = Lowest.of(outside, seen.airC());
        }
        if (judgement.damp() instanceof Damp.Seen damp
                && damp.wettestRhPercent() >= site.targets().dryOnPercent()) {
            wetS += dtS;
        }
    }

    private void countStarts(RelaySet now) {
        for (int i = 0; i < starts.length; i++) {
            starts[i] += now.has(i) && !closed.has(i) ? 1 : 0;
        }
        closed = now;
    }

    private Night night(LocalDate begun) {
        List<Night.Use> uses = new ArrayList<>();
        for (int i = 0; i < kWh.length; i++) {
            uses.add(new Night.Use(site.machines().get(i).id(), kWh[i], starts[i]));
        }
        return new Night(begun, bench, outside, seenS, wetS, uses, cost, litres, alerts);
    }
}
