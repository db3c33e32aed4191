package rimeward.core.outlook;

import java.util.OptionalDouble;

/**
 * The tunnel at the moment a plan is made.
 *
 * @param nowEpochS when, s since 1970 UTC
 * @param airC the air in the middle of the tunnel, °C
 * @param massC pots, slab and soil, °C; absent: as warm as the air, and less well known
 * @param rhPercent relative humidity over water of the air in the middle, %; absent: as the model's balance has it
 * @param tankLeftL room left in the dryer's tank, L; absent: it is taken to be empty
 */
public record PlanStart(
        long nowEpochS, double airC, OptionalDouble massC, OptionalDouble rhPercent, OptionalDouble tankLeftL) {
    /** @throws IllegalArgumentException if a number is none that a tunnel can have */
    public PlanStart {
        within("the air inside, °C,", airC, -60, 60);
        massC.ifPresent(value -> within("the mass inside, °C,", value, -60, 60));
        rhPercent.ifPresent(value -> within("the relative humidity inside, %,", value, 0, 100));
        tankLeftL.ifPresent(value -> within("the room left in the tank, L,", value, 0, Double.POSITIVE_INFINITY));
    }

    /** With nothing known but the air. */
    public static PlanStart of(long nowEpochS, double airC) {
        return new PlanStart(nowEpochS, airC, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static void within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) { // written so that NaN is refused too
            throw new IllegalArgumentException(
                    what + " is " + value + "; it must lie between " + least + " and " + most);
        }
    }
}
