package rimeward.sim.run;

import java.util.List;
import java.util.Optional;

/**
 * The least on which perfect foresight could have kept what the judged law kept: the floor (or where that law was below it, no colder than
 * it), and air no damper.
 *
 * @param kWh least electricity; dryer and fan may run for any share of a quarter of an hour
 * @param cost least money, which may take more electricity at cheaper times
 * @param playedKWh what the first took when played into the simulator, dryer and fan for whole quarters, the dryer with its own warming up,
 *     running on and controls
 * @param playedCost the same of the second
 * @param playedShortK deepest that either was then below what it had to keep, K
 * @param dampPercentH how damp the law was: quarter-hour means of the coldest bench's humidity above the target, %h
 * @param playedDampPercentH how damp the damper of the two played was, %h
 * @param belowH time with the law below the floor, in whole quarters, h
 * @param held what the floor itself would have taken, where the law broke it
 * @param steps from the least to the law, what each thing that the law must reckon with costs; the first is {@link #kWh}
 */
public record Least(
        double kWh,
        double cost,
        double playedKWh,
        double playedCost,
        double playedShortK,
        double dampPercentH,
        double playedDampPercentH,
        double belowH,
        Optional<Held> held,
        List<Step> steps) {
    public Least {
        steps = List.copyOf(steps);
    }

    /**
     * The least electricity again, held to something more.
     *
     * @param says to what
     */
    public record Step(String says, double kWh) {}

    /**
     * The floor held as far as machines that foresaw everything could: as few degree-hours below it as possible first, then as little
     * electricity.
     *
     * @param belowH time in which the coldest bench was below it all the same, in whole quarters, h
     * @param deepestK how deep at worst, K
     */
    public record Held(double kWh, double belowH, double deepestK) {}
}
