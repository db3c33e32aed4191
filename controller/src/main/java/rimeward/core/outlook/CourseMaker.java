package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.core.outlook.Course.Step;
import rimeward.core.outlook.OutsideAir.Seen;

/**
 * The next day outside, from the best there is: a forecast corrected by what it missed here, else the evening by the nights before (FAO
 * 2005), else a day like the last ones. What the sensor shows now counts at first, and ever less later.
 */
public record CourseMaker(SunTimes sun) {
    private static final long STEP_S = 900;
    private static final long DAY_S = 86_400;

    /** What the own sensor may be off now, K. Own choice. */
    private static final double SENSOR_K = 0.3;

    /**
     * From now on, in quarters of an hour; for a day, or as far as the forecast goes. Empty where nothing at all is known.
     *
     * @param now what the own sensor shows
     * @param forecast fresh enough to be used
     * @param errors what its source missed here before
     * @param diary the own nights
     */
    public Optional<Course> from(
            long nowEpochS, OutsideAir now, Optional<Forecast> forecast, ForecastErrors errors, NightDiary diary) {
        return forecast.flatMap(said -> ForecastBase.of(nowEpochS, said, errors, sun))
                .or(() -> ownBase(nowEpochS, now, diary))
                .map(base -> new Course(base.basis(), steps(nowEpochS, now, base), base.lowestOffK()));
    }

    private Optional<Base> ownBase(long nowEpochS, OutsideAir now, NightDiary diary) {
        return GuessBase.of(nowEpochS, now, diary.nights(), sun)
                .map(guess -> LocalBase.of(nowEpochS, diary.evening(nowEpochS, sun), diary.nights(), guess, sun)
                        .orElse(guess));
    }

    private static List<Step> steps(long nowEpochS, OutsideAir now, Base base) {
        long endS = StrictMath.min(nowEpochS + DAY_S, base.endsEpochS());
        double offK = now instanceof Seen seen ? seen.airC() - base.airC(nowEpochS) : 0;
        List<Step> steps = new ArrayList<>();
        for (long t = nowEpochS; t <= endS; t += STEP_S) {
            steps.add(now instanceof Seen ? from(base, t, nowEpochS, offK) : plain(base, t));
        }
        double lowestC = steps.stream().mapToDouble(Step::airC).min().orElseThrow();
        return steps.stream()
                .map(step -> damp(step, now, base, nowEpochS, lowestC))
                .toList();
    }

    private static Step plain(Base base, long t) {
        return new Step(t, base.airC(t), base.spreadK(t), 0);
    }

    private static Step from(Base base, long t, long nowEpochS, double offK) {
        double keep = base.keep(t, nowEpochS);
        return new Step(
                t, base.airC(t) + keep * offK, StrictMath.hypot(base.spreadK(t, nowEpochS), keep * SENSOR_K), 0);
    }

    /**
     * With a dew point: said, and corrected like the air; else as it is seen now; else as low as the air gets (FAO-56, ch. 3: the night's
     * lowest is near the dew point).
     */
    private static Step damp(Step step, OutsideAir now, Base base, long nowEpochS, double lowestC) {
        OptionalDouble seenC = now instanceof Seen air ? air.dewPointC() : OptionalDouble.empty();
        OptionalDouble saidC = base.dewPointC(step.epochS());
        double dewC = saidC.orElse(seenC.orElse(lowestC));
        OptionalDouble saidNowC = base.dewPointC(nowEpochS);
        if (seenC.isPresent() && saidC.isPresent() && saidNowC.isPresent()) {
            dewC += base.keep(step.epochS(), nowEpochS) * (seenC.getAsDouble() - saidNowC.getAsDouble());
        }
        return new Step(step.epochS(), step.airC(), step.spreadK(), StrictMath.min(dewC, step.airC()));
    }
}
