package rimeward.planning;

import java.util.Optional;
import rimeward.core.Stepped;
import rimeward.core.order.HandedForecast;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.KeptForecast;
import rimeward.core.outlook.NightSpan;
import rimeward.core.outlook.SunTimes;
import rimeward.core.tunnel.LossWatch;
import rimeward.port.Forecasts;
import rimeward.port.Past;
import rimeward.site.Site;

/**
 * Does what is due at a moment: in the morning it reckons the night that was and learns of it, from noon on it plans the night that comes, anew
 * each quarter of an hour. Knows no clock but the decisions' own. For one thread that may wait.
 */
public final class Planner {
    private static final long PLAN_S = 900;
    private static final long DAY_S = 86_400;

    /** From an hour after sunrise on it only gets warmer; the record's last batch comes a little later. */
    private static final long MORNING_S = 4500;

    private static final long NEVER_S = Long.MIN_VALUE / 2;

    private final Site settings;
    private final Forecasts forecasts;
    private final Past past;
    private final Findings findings;
    private final ForecastSchool school;
    private final NightPlanner nights;
    private Optional<Learned> learned = Optional.empty();
    private long taughtNight = NEVER_S;
    private long plannedS = NEVER_S;
    private Optional<Forecast> plannedBy = Optional.empty();

    public Planner(Site settings, Forecasts forecasts, Past past, Findings findings) {
        this.settings = settings;
        this.forecasts = forecasts;
        this.past = past;
        this.findings = findings;
        school = new ForecastSchool(past, findings);
        nights = new NightPlanner(settings, past, findings, school);
    }

    /** What the grower handed over stands before what the sources say, as it does for control. */
    public void handed(HandedForecast forecast) {
        nights.handed(forecast);
        plannedS = NEVER_S;
    }

    /**
     * Does what is due.
     *
     * @param newest the last decision
     * @param asked whether the night is to be planned now, due or not
     */
    public void look(Stepped newest, boolean asked) {
        var wall = newest.outcome().frame().tick().wall();
        if (!wall.trusted()) {
            return;
        }
        long nowS = wall.epochS();
        SunTimes sun = SunTimes.of(settings, nowS);
        long morning = lastMorning(sun, nowS);
        if (morning != taughtNight) {
            taughtNight = morning;
            trying("learn from the record", () -> learn(nowS));
            trying("reckon the last night", () -> reckon(sun, nowS));
        }
        Optional<Forecast> forecast = forecasts.newest();
        boolean fresh = !forecast.equals(plannedBy);
        if (fresh) {
            plannedBy = forecast;
            forecast.ifPresent(said -> findings.keeps(Remembered.FORECAST, KeptForecast.write(said)));
        }
        boolean due = asked || fresh || nowS >= plannedS + PLAN_S || nowS < plannedS;
        if (due && PlanEnd.isEveningOrNight(settings, sun, nowS)) {
            plannedS = nowS;
            Learned known = learned.orElseGet(() -> Learned.nothing(settings, sun));
            trying("plan the night", () -> nights.plan(newest, known, sun, nowS, forecast));
        }
    }

    private void trying(String what, Runnable job) {
        try {
            job.run();
        } catch (RuntimeException e) {
            findings.says("could not " + what + ", and control goes on without: " + e.getMessage());
        }
    }

    /** Counts the mornings. */
    private static long lastMorning(SunTimes sun, long nowS) {
        long night = Math.floorDiv(sun.noonBefore(nowS), DAY_S);
        return isMorning(sun.night(nowS), nowS) ? night : night - 1;
    }

    private static boolean isMorning(Optional<NightSpan> night, long nowS) {
        return night.isPresent() && nowS >= night.get().sunriseEpochS() + MORNING_S;
    }

    private void learn(long nowS) {
        Learned all = Learned.from(past, settings, nowS);
        learned = Optional.of(all);
        findings.learned(all.lesson());
        school.learn(all);
        LossWatch loss = Remembered.loss(past).after(all.lesson(), all.stretches());
        findings.keeps(Remembered.LOSS, loss.toText());
        findings.heatLoss(loss.standing());
    }

    private void reckon(SunTimes sun, long nowS) {
        Optional<NightSpan> night = sun.night(nowS);
        Optional<NightSpan> over = isMorning(night, nowS) ? night : sun.night(nowS - DAY_S);
        if (over.isPresent() && learned.isPresent()) {
            Reckoning.of(past, settings, learned.get().estimate(), over.get()).ifPresent(findings::reckoned);
        }
    }
}
