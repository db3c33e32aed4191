package rimeward.sim.app;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.assembly.Audience;
import rimeward.core.Outcome;
import rimeward.core.Stepped;
import rimeward.core.guard.Guarded;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Outside;
import rimeward.core.order.Answer;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanText;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Site;

/** What a person sees of a run while it goes on: a line each simulated quarter of an hour, and each alert. */
final class LiveLines implements Audience {
    private static final long EVERY_MS = 900_000;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ROOT);

    private final Site site;
    private final ZoneOffset offset;
    private final Consumer<String> lines;
    private long shownQuarter = Long.MIN_VALUE;

    LiveLines(Scenario scenario, Consumer<String> lines) {
        site = scenario.site();
        offset = scenario.offset();
        this.lines = lines;
    }

    @Override
    public void says(String line) {
        lines.accept("           " + line);
    }

    @Override
    public void decided(Stepped stepped) {
        Outcome outcome = stepped.outcome();
        long quarter = Math.floorDiv(outcome.frame().tick().wall().epochMs(), EVERY_MS);
        if (quarter != shownQuarter) {
            shownQuarter = quarter;
            lines.accept(clock(outcome.frame().tick().wall().epochMs()) + "  " + status(outcome));
        }
    }

    @Override
    public void answered(Answer answer) {
        lines.accept("           " + (answer.taken() ? "DONE   " : "REFUSED  ") + answer.text());
    }

    @Override
    public void promised(NightPlan plan) {
        lines.accept("PLAN       " + PlanText.brief(plan, site));
    }

    @Override
    public void reckoned(PastNight night) {
        lines.accept("NIGHT      " + night.inWords(site));
    }

    @Override
    public void told(Alert alert) {
        lines.accept(clock(alert.at().wall().epochMs()) + "  " + headline(alert) + alert.text());
    }

    private static String headline(Alert alert) {
        return switch (alert.change()) {
            case RAISED -> "ALERT  " + alert.kind().title() + ": ";
            case REPEATED -> "STILL  ";
            case ACKNOWLEDGED -> "SEEN   ";
            case CLEARED -> "OVER   ";
        };
    }

    private String clock(long epochMs) {
        return CLOCK.format(Instant.ofEpochMilli(epochMs).atOffset(offset));
    }

    private String status(Outcome outcome) {
        String inside = outcome.judgement().inside() instanceof Inside.Seen seen ? degrees(seen.coldestC()) : "unknown";
        String outside = outcome.judgement().outside() instanceof Outside.Seen seen ? degrees(seen.airC()) : "unknown";
        String damp = outcome.judgement().damp() instanceof Damp.Seen seen
                ? String.format(Locale.ROOT, "%3.0f %%", seen.wettestRhPercent())
                : "unknown";
        return "coldest bench " + inside + "   outside " + outside + "   humidity " + damp + "   "
                + holder(outcome.guarded()) + "   running: "
                + site.inWords(outcome.guarded().closed());
    }

    private static String degrees(double tempC) {
        return String.format(Locale.ROOT, "%5.1f °C", tempC);
    }

    private String holder(Guarded guarded) {
        return switch (guarded.holder()) {
            case NOT_NEEDED ->
                guarded.closed().meets(site.heaterStages()) ? "heater runs on      " : "no heat needed      ";
            case HEATER -> "heater holds floor  ";
            case DRYER -> "dryer holds floor   ";
            case BARRED -> "heat barred: too hot";
            case NOBODY -> "NOBODY HOLDS FLOOR  ";
        };
    }
}
