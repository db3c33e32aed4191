package rimeward.site;

/**
 * What the grower asks of the air.
 *
 * @param guardMarginK least distance above the floor at which heat must be on, K
 * @param differentialK gap between switch-on and switch-off of the floor band, K
 * @param hotC above this air temperature no heat source runs, °C
 * @param rhPercent relative humidity (over water) to keep below, %
 * @param rhDifferentialPercent gap between switch-on and switch-off of the dry band, %
 * @param benchDewSpreadK the dryer is asked for when the coldest bench is nearer than this to the dew point, K
 * @param filmDewSpreadK the same for the film, K; negative: how far below the dew point the film may be
 */
public record Targets(
        double guardMarginK,
        double differentialK,
        double hotC,
        double rhPercent,
        double rhDifferentialPercent,
        double benchDewSpreadK,
        double filmDewSpreadK) {
    public Targets {
        Check.within("guardMarginK", guardMarginK, 0.2, 5);
        Check.within("differentialK", differentialK, 0.3, 5);
        Check.within("hotC", hotC, 10, 45);
        Check.within("rhPercent", rhPercent, 40, 95);
        Check.within("rhDifferentialPercent", rhDifferentialPercent, 2, 30);
        Check.within("benchDewSpreadK", benchDewSpreadK, 0, 10);
        Check.within("filmDewSpreadK", filmDewSpreadK, -20, 10);
    }

    /** The hot limit lies at least so far above the floor band, K, or the two would fight. Own choice. */
    public static final double HOT_CLEAR_K = 1;

    /** Where heat is no longer needed, with this floor, °C. */
    public double bandEndC(double floorC) {
        return floorC + guardMarginK + differentialK;
    }

    /** Whether the hot limit leaves the band above this floor room. */
    public boolean leavesRoomAbove(double floorC) {
        return bandEndC(floorC) + HOT_CLEAR_K <= hotC;
    }

    /** Dryer on at or above this relative humidity, %. */
    public double dryOnPercent() {
        return rhPercent + rhDifferentialPercent / 2;
    }

    /** Dryer off at or below this relative humidity, %. */
    public double dryOffPercent() {
        return rhPercent - rhDifferentialPercent / 2;
    }
}
