package rimeward.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.CourseMaker;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.FrostChance;
import rimeward.core.outlook.Lowest;
import rimeward.core.outlook.NightDiary;
import rimeward.core.outlook.OutsideAir;

/** A whole winter as the service would live it: it looks, learns, and each hour says how likely the coming night is too cold. */
final class WinterRun {
    /** Until ten in the morning, when the sun is up. */
    private static final int HOURS = 22;

    private static final CourseMaker MAKER = new CourseMaker(HollowWinter.SUN);

    private final HollowWinter winter;
    private final Knowledge knowledge;
    private NightDiary diary = NightDiary.EMPTY;
    private ForecastErrors errors = ForecastErrors.USUAL;

    private WinterRun(HollowWinter winter, Knowledge knowledge) {
        this.winter = winter;
        this.knowledge = knowledge;
    }

    static List<LoggedNight> nights(HollowWinter winter, Knowledge knowledge) {
        WinterRun run = new WinterRun(winter, knowledge);
        List<LoggedNight> nights = new ArrayList<>();
        for (int night = 0; night < winter.nights; night++) {
            nights.add(run.live(night));
            run.learn(night);
        }
        return nights;
    }

    private LoggedNight live(int night) {
        long noonS = winter.noonS(night);
        long untilS = winter.noonS(night + 1) - HollowWinter.STEP_S;
        double lowestC = winter.lowestC(night);
        List<LoggedNight.Said> said = new ArrayList<>();
        double onsetH = 24;
        for (long t = noonS; t <= untilS; t += HollowWinter.STEP_S) {
            diary = diary.after(winter.seen(t), HollowWinter.SUN);
            if ((t - noonS) % HollowWinter.HOUR_S == 0 && said.size() < HOURS) {
                said.add(said(t, untilS, lowestC));
            }
            if (onsetH == 24 && winter.airC(t) < winter.capabilityC) {
                onsetH = (double) (t - noonS) / HollowWinter.HOUR_S;
            }
        }
        long sunsetS = HollowWinter.SUN
                .night(noonS + HollowWinter.HOUR_S)
                .orElseThrow()
                .sunsetEpochS();
        int sunset = (int) ((sunsetS - noonS) / HollowWinter.HOUR_S) + 1;
        return new LoggedNight(said, sunset, lowestC < winter.capabilityC, onsetH);
    }

    private LoggedNight.Said said(long nowS, long untilS, double lowestC) {
        Course course = course(nowS);
        Lowest lowest = course.lowest(nowS, untilS);
        return new LoggedNight.Said(
                FrostChance.of(course, nowS, untilS, winter.knownCapabilityC).probability(),
                (lowestC - lowest.airC()) / lowest.spreadK());
    }

    private Course course(long nowS) {
        Optional<Forecast> forecast =
                knowledge == Knowledge.OWN_NIGHTS ? Optional.empty() : Optional.of(winter.newest(nowS));
        return MAKER.from(nowS, winter.seen(nowS), forecast, errors, diary).orElseThrow();
    }

    /** By two forecasts, half a day apart. */
    private void learn(int night) {
        if (knowledge == Knowledge.FORECAST_CORRECTED) {
            long noonS = winter.noonS(night);
            for (long madeS : new long[] {noonS, noonS + 9L * HollowWinter.HOUR_S}) {
                List<OutsideAir.Seen> seen = new ArrayList<>();
                for (long t = noonS; t < winter.noonS(night + 1); t += HollowWinter.HOUR_S) {
                    seen.add(winter.seen(t));
                }
                errors = errors.after(winter.newest(madeS), seen, HollowWinter.SUN);
            }
        }
    }
}
