package rimeward.core.outlook;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import rimeward.air.MoistAir;
import rimeward.site.Site;

/**
 * The night to be simulated: its place, weather and start, cut into steps.
 *
 * @param fromEpochS start of the first step, on a whole five minutes, s since 1970 UTC
 * @param hours one for each hour of the local clock; the first and the last may be parts of one
 */
record Tonight(
        Site site,
        CourseLine line,
        PlanStart start,
        PlanChoices choices,
        double pressurePa,
        long fromEpochS,
        int steps,
        List<Hour> hours) {
    static final int STEP_S = 300;

    /** No plan looks farther, s. */
    private static final long MOST_S = 86_400;

    /** Steps of one hour of the clock: from, inclusive, and to, exclusive. */
    record Hour(int from, int to) {}

    /** @throws IllegalArgumentException if the course does not reach beyond now */
    static Tonight of(Site site, Course course, PlanStart start, PlanChoices choices) {
        CourseLine line = new CourseLine(course.steps());
        long fromS = Math.floorDiv(start.nowEpochS(), STEP_S) * STEP_S;
        int steps = (int) (StrictMath.min(MOST_S, line.endEpochS() - fromS) / STEP_S);
        if (steps < 1) {
            throw new IllegalArgumentException("the course of the night ends before the plan begins, at "
                    + Instant.ofEpochSecond(line.endEpochS()));
        }
        double pressurePa = MoistAir.pressurePa(site.tunnel().altitudeM());
        return new Tonight(site, line, start, choices, pressurePa, fromS, steps, hours(site, fromS, steps));
    }

    Tonight with(PlanChoices others) {
        return new Tonight(site, line, start, others, pressurePa, fromEpochS, steps, hours);
    }

    private static List<Hour> hours(Site site, long fromS, int steps) {
        List<Hour> hours = new ArrayList<>();
        int begun = 0;
        for (int step = 1; step <= steps; step++) {
            if (step == steps || local(site, fromS + (long) step * STEP_S).getMinute() == 0) {
                hours.add(new Hour(begun, step));
                begun = step;
            }
        }
        return List.copyOf(hours);
    }

    private static ZonedDateTime local(Site site, long epochS) {
        return Instant.ofEpochSecond(epochS).atZone(site.zone());
    }

    long epochS(int step) {
        return fromEpochS + (long) step * STEP_S;
    }

    /** Price in the middle of a step, by the local clock, the tariff's currency per kWh. */
    double pricePerKWh(int step) {
        ZonedDateTime at = local(site, epochS(step) + STEP_S / 2);
        return site.tariff().pricePerKWh(at.getHour() * 60 + at.getMinute());
    }
}
