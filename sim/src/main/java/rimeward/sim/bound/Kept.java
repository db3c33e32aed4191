package rimeward.sim.bound;

import java.util.Arrays;

/**
 * What a law kept, and the bound must keep too: the floor, or where the law itself was below it, no colder than that; and air no damper.
 * Dampness is the mean humidity of each quarter of an hour at the coldest bench above the target, added up in percent-hours: hours alone
 * would let the bound pay for dry hours with very wet ones.
 */
final class Kept {
    private final double floorC;
    private final double targetPercent;
    private final double[] lowestC;
    private final double[] endC;
    private final double[] rhPercent;
    private final Schedule schedule;

    Kept(double floorC, double targetPercent, double[] lowestC, double[] endC, double[] rhPercent, Schedule schedule) {
        this.floorC = floorC;
        this.targetPercent = targetPercent;
        this.lowestC = lowestC;
        this.endC = endC;
        this.rhPercent = rhPercent;
        this.schedule = schedule;
    }

    /** The floor. */
    double floorC() {
        return floorC;
    }

    /** The humidity target. */
    double targetPercent() {
        return targetPercent;
    }

    /** Coldest bench in each quarter as the law had it, °C. */
    double[] lowestC() {
        return lowestC;
    }

    /** The same at each quarter's end. */
    double[] endC() {
        return endC;
    }

    /** Mean humidity at the coldest bench in each quarter, %. */
    double[] rhPercent() {
        return rhPercent;
    }

    /** What the law ran. */
    Schedule schedule() {
        return schedule;
    }

    /** What the bound must keep at the coldest of a quarter, °C. */
    double needC(int quarter) {
        return Math.min(floorC, lowestC[quarter]);
    }

    double needEndC(int quarter) {
        return Math.min(floorC, endC[quarter]);
    }

    /** How much damper than the target the law's air was, %h. */
    double dampPercentH() {
        return dampPercentH(rhPercent);
    }

    double dampPercentH(double[] meansPercent) {
        double sum = 0;
        for (double percent : meansPercent) {
            sum += Math.max(0, percent - targetPercent) * Course.QUARTER_H;
        }
        return sum;
    }

    /** Held to another floor; what the law itself broke is still allowed. */
    Kept withFloor(double otherC) {
        return new Kept(otherC, targetPercent, lowestC, endC, rhPercent, schedule);
    }

    /** The floor itself, whatever the law broke. */
    Kept strict() {
        double[] warm = new double[lowestC.length];
        Arrays.fill(warm, Double.POSITIVE_INFINITY);
        return new Kept(floorC, targetPercent, warm, warm, rhPercent, schedule);
    }

    /** Time in which the law was below the floor, in whole quarters, h. */
    double belowH() {
        int below = 0;
        for (double lowest : lowestC) {
            below += lowest < floorC ? 1 : 0;
        }
        return below * Course.QUARTER_H;
    }
}
