package rimeward.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.air.MoistAir;
import rimeward.core.Stepped;
import rimeward.core.order.HandedForecast;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.CourseMaker;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.NightSpan;
import rimeward.core.outlook.Outlook;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.outlook.PlanStart;
import rimeward.core.outlook.SunTimes;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.site.Site;

/** Plans the night from what is seen, forecast and learned; where the air inside or all of the weather is unknown, it leaves the last plan be. */
final class NightPlanner {
    private static final long DAY_S = 86_400;

    /** A handed forecast whose night is nearly over still makes a plan so long, s. */
    private static final long LEAST_S = 900;

    /** What is promised last before dark is promised within so long before sunset, s. */
    private static final long PROMISE_S = 3600;

    private final Site settings;
    private final Past past;
    private final Findings findings;
    private final ForecastSchool school;
    private HandedForecast handed = HandedForecast.NONE;
    private Optional<LocalDate> promised = Optional.empty();

    NightPlanner(Site settings, Past past, Findings findings, ForecastSchool school) {
        this.settings = settings;
        this.past = past;
        this.findings = findings;
        this.school = school;
    }

    void handed(HandedForecast forecast) {
        handed = forecast;
    }

    void plan(Stepped newest, Learned learned, SunTimes sun, long nowS, Optional<Forecast> forecast) {
        Evening evening = evening(newest, nowS);
        Optional<Course> expected = course(newest, learned, sun, nowS, forecast);
        Optional<PlanStart> start = evening.start();
        if (expected.isEmpty() || start.isEmpty()) {
            return;
        }
        findings.expects(expected.get(), nowS);
        Course course = expected.get().until(PlanEnd.epochS(settings, sun, nowS));
        Site site = evening.site();
        TunnelEstimate tunnel = learned.estimate();
        NightPlan plan = NightPlan.of(site, tunnel, course, start.get(), evening.choices());
        findings.planned(plan, Alternatives.planned(site, tunnel, course, start.get(), evening.choices()));
        promise(plan, site, sun.night(nowS), forecast);
    }

    private Evening evening(Stepped newest, long nowS) {
        double floorC = newest.outcome().floorC();
        Site site = floorC == settings.floorC() ? settings : settings.withFloor(floorC);
        FrameRow now = FrameRow.of(newest.outcome(), false);
        return Evening.of(
                day(nowS), now, site, newest.next().guard().standDowns().machines());
    }

    /** A record that cannot be read is told of elsewhere; the plan takes the cold corner to be as usual then. */
    private List<FrameRow> day(long nowS) {
        List<FrameRow> day = new ArrayList<>();
        try {
            past.eachFrame((nowS - DAY_S) * 1000, Long.MAX_VALUE, Integer.MAX_VALUE, day::add);
        } catch (RuntimeException e) {
            return List.of();
        }
        return day;
    }

    private Optional<Course> course(
            Stepped newest, Learned learned, SunTimes sun, long nowS, Optional<Forecast> forecast) {
        double pressurePa = MoistAir.pressurePa(settings.tunnel().altitudeM());
        OutsideAir outside = OutsideAir.of(nowS, newest.outcome().judgement().outside(), pressurePa);
        long elapsedMs = newest.outcome().frame().tick().elapsedMs();
        if (HandedForecast.used(handed, Outlook.NONE, elapsedMs) instanceof Outlook.Night night) {
            double outsideC = outside instanceof OutsideAir.Seen seen ? seen.airC() : night.lowestOutsideC();
            long endS = nowS + Math.max(LEAST_S, (long) night.endsInS());
            return Optional.of(PlainCourse.of("yours", nowS, outsideC, night.lowestOutsideC(), night.spreadK(), endS));
        }
        return new CourseMaker(sun).from(nowS, outside, forecast, school.errors(forecast), learned.diary());
    }

    /** The last plan before dark counts; where the service came too late for one, its first. */
    private void promise(NightPlan plan, Site site, Optional<NightSpan> night, Optional<Forecast> forecast) {
        long nowS = plan.madeEpochS();
        boolean dusk = night.isPresent()
                && nowS >= night.get().sunsetEpochS() - PROMISE_S
                && nowS < night.get().sunsetEpochS();
        boolean dark = night.isEmpty()
                || (nowS >= night.get().sunsetEpochS() && nowS < night.get().sunriseEpochS());
        PlanPromise bare = PlanPromise.of(plan, site, 0, 0, 0);
        if (dusk || (dark && !isPromised(bare.evening()))) {
            promised = Optional.of(bare.evening());
            forecast.ifPresent(school::judgeLater);
            findings.promised(soFar(bare.evening())
                    .map(so -> PlanPromise.of(plan, site, so.kWh(), so.cost(), so.litresEstimated()))
                    .orElse(bare));
        }
    }

    private boolean isPromised(LocalDate evening) {
        return promised.filter(evening::equals).isPresent()
                || past.plans(2).stream().anyMatch(plan -> plan.evening().equals(evening));
    }

    /** The night as far as it has gone. */
    private Optional<Night> soFar(LocalDate evening) {
        return past.nights(2).stream()
                .filter(night -> night.evening().equals(evening))
                .findFirst();
    }
}
