package rimeward.core.outlook;

import java.util.List;

/** A course read at any moment: straight from step to step, level before the first and after the last. */
record CourseLine(List<Course.Step> steps) {
    Course.Step at(double epochS) {
        Course.Step before = steps.get(0);
        for (Course.Step step : steps) {
            if (step.epochS() > epochS) {
                return between(before, step, epochS);
            }
            before = step;
        }
        return before;
    }

    long endEpochS() {
        return steps.get(steps.size() - 1).epochS();
    }

    private static Course.Step between(Course.Step from, Course.Step to, double epochS) {
        long spanS = to.epochS() - from.epochS();
        double share = spanS <= 0 ? 0 : StrictMath.max(0, (epochS - from.epochS()) / spanS);
        return new Course.Step(
                (long) epochS,
                from.airC() + share * (to.airC() - from.airC()),
                from.spreadK() + share * (to.spreadK() - from.spreadK()),
                from.dewPointC() + share * (to.dewPointC() - from.dewPointC()));
    }
}
