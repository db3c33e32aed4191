package rimeward.core.outlook;

import java.util.List;
import rimeward.core.outlook.Course.Step;
import rimeward.core.tunnel.Figure;

/**
 * How likely it is that the outside gets colder than this tunnel's machines can hold the floor against.
 *
 * @param probability 0 to 1
 * @param epochS from when on, if it happens: the first hour at which it is half as likely as at the worst; s since 1970 UTC
 */
public record FrostChance(double probability, long epochS) {
    /** Own choice. */
    private static final double NEARLY_AS_LIKELY = 0.5;

    private static final double LEAST_SPREAD_K = 1e-3;

    /**
     * Of the part of a course between two times. Both errors are taken to be normal and to have nothing to do with each other. The warmth
     * stored in the tunnel is not counted: an hour or two below the capability may pass without harm.
     *
     * @param capabilityC coldest outside temperature at which the floor is still held, °C
     */
    public static FrostChance of(Course course, long fromEpochS, long untilEpochS, Figure capabilityC) {
        Lowest lowest = course.lowest(fromEpochS, untilEpochS);
        List<Step> steps = course.steps().stream()
                .filter(step -> step.epochS() >= fromEpochS && step.epochS() <= untilEpochS)
                .toList();
        double worst = steps.stream()
                .mapToDouble(step -> below(step.airC(), step.spreadK(), capabilityC))
                .max()
                .orElseThrow();
        long whenS = steps.stream()
                .filter(step -> below(step.airC(), step.spreadK(), capabilityC) >= NEARLY_AS_LIKELY * worst)
                .findFirst()
                .orElseThrow()
                .epochS();
        return new FrostChance(below(lowest.airC(), lowest.spreadK(), capabilityC), whenS);
    }

    /** Of a night of which only the lowest is forecast; it is taken to be cold from now on. */
    public static double of(Outlook.Night night, Figure capabilityC) {
        return below(night.lowestOutsideC(), night.spreadK(), capabilityC);
    }

    private static double below(double airC, double spreadK, Figure capabilityC) {
        double bothK = StrictMath.hypot(spreadK, capabilityC.standardError());
        return Normal.below((capabilityC.value() - airC) / StrictMath.max(LEAST_SPREAD_K, bothK));
    }
}
