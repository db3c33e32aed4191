package rimeward.adapter.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.outlook.PastNight;
import rimeward.core.tunnel.Lesson;
import rimeward.page.NightSpan;
import rimeward.page.Planned;
import rimeward.page.Sight;
import rimeward.page.StandingAlerts;
import rimeward.record.SavedState;
import rimeward.site.Site;

/** The newest of everything that is shown, handed over by whoever has it. From any thread; nobody waits for anybody. */
final class Newest {
    private final Site site;
    private final StandingAlerts alerts = new StandingAlerts();
    private final Recent recent = new Recent();
    private final BooleanSupplier recordFailing;
    private final BooleanSupplier brokerFailing;
    private final String version;
    private final LongSupplier nanoTime;
    private volatile @Nullable Stepped stepped;
    private volatile @Nullable SavedState saved;
    private volatile @Nullable Planned planned;
    private volatile @Nullable PastNight past;
    private volatile @Nullable Lesson lesson;
    private volatile Sight.@Nullable Answered answer;
    private volatile long startedEpochS;
    private volatile long decidedNs;

    Newest(
            Site site,
            BooleanSupplier recordFailing,
            BooleanSupplier brokerFailing,
            String version,
            LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        this.site = site;
        this.recordFailing = recordFailing;
        this.brokerFailing = brokerFailing;
        this.version = version;
    }

    StandingAlerts alerts() {
        return alerts;
    }

    Recent recent() {
        return recent;
    }

    void decided(Stepped newer) {
        if (stepped == null) {
            startedEpochS = newer.outcome().frame().tick().wall().epochS();
        }
        decidedNs = nanoTime.getAsLong();
        stepped = newer;
        recent.add(newer.outcome());
    }

    void kept(SavedState newer) {
        saved = newer;
    }

    void planned(Planned newer) {
        planned = newer;
    }

    void reckoned(PastNight newer) {
        past = newer;
    }

    void learned(Lesson newer) {
        lesson = newer;
    }

    void answered(Answer newer) {
        Stepped now = stepped;
        long epochS = now == null ? 0 : now.outcome().frame().tick().wall().epochS();
        answer = new Sight.Answered(epochS, newer.taken(), newer.text());
    }

    void told(Alert alert) {
        alerts.told(alert);
    }

    /** Empty before the first decision. */
    Optional<Sight> sight() {
        Stepped now = stepped;
        if (now == null) {
            return Optional.empty();
        }
        return Optional.of(new Sight(
                site,
                now.outcome(),
                StrictMath.max(0, nanoTime.getAsLong() - decidedNs) / 1e9,
                alerts.all(),
                saved,
                planned,
                past,
                lesson,
                answer,
                version,
                startedEpochS,
                recordFailing.getAsBoolean(),
                brokerFailing.getAsBoolean()));
    }

    /** Another one whenever there is something new of its kind. */
    @Nullable
    Object mark(PageFeed.Topic topic) {
        return switch (topic) {
            case NOW -> stepped;
            case PLAN -> planned;
            case NIGHTS -> nights();
        };
    }

    private record Nights(LocalDate evening, @Nullable Lesson lesson) {}

    /** A night ended, or something was learned. */
    private @Nullable Nights nights() {
        Stepped now = stepped;
        if (now == null) {
            return null;
        }
        long epochMs = now.outcome().frame().tick().wall().epochMs();
        return new Nights(NightSpan.eveningOf(epochMs, site.zone()), lesson);
    }
}
