package rimeward.air;

/**
 * One wet-bulb equation of ASHRAE Fundamentals 2017, ch. 1: eq. 33 over water or eq. 35 over ice, solved for the bulb temperature.
 * Enthalpies are in kJ/kg here, as printed there.
 *
 * <p>Written as a heat balance the equation rises and bends upwards with the bulb temperature, so Newton from the air temperature
 * comes down to the answer without overshooting it.
 */
record WetBulb(double latentKj, double latentFallKjPerK, double waterHeatKjPerK, PressureCurve saturation) {

    static final WetBulb WET = new WetBulb(2501, 2.326, 4.186, Saturation.WATER);
    static final WetBulb ICED = new WetBulb(2830, 0.24, 2.1, Saturation.ICE);

    /** Bone-dry air of 60 °C needs seven steps; the bound only guards against nonsense input. */
    private static final int MAX_STEPS = 20;

    private static final double CLOSE_K = 1e-9;
    private static final double DRY_AIR_KJ_PER_K = AirConstants.DRY_AIR_HEAT_J_PER_KG_K / 1000;
    private static final double VAPOUR_KJ_PER_K = AirConstants.VAPOUR_HEAT_J_PER_KG_K / 1000;

    static double solveC(double airC, double humidityKgPerKg, double pressurePa) {
        if (airC >= 0) {
            double wetC = WET.fromC(airC, airC, humidityKgPerKg, pressurePa);
            if (wetC >= 0) {
                return wetC;
            }
        }
        return ICED.fromC(Math.min(airC, 0), airC, humidityKgPerKg, pressurePa);
    }

    private double fromC(double startC, double airC, double humidityKgPerKg, double pressurePa) {
        double bulbC = startC;
        for (int step = 0; step < MAX_STEPS; step++) {
            double moveK = newtonMoveK(bulbC, airC, humidityKgPerKg, pressurePa);
            bulbC -= moveK;
            if (Math.abs(moveK) < CLOSE_K) {
                break;
            }
        }
        return Math.min(bulbC, startC); // saturated air: the bulb is not warmer than the air
    }

    private double newtonMoveK(double bulbC, double airC, double humidityKgPerKg, double pressurePa) {
        double vapourPa = saturation.pressurePa(bulbC);
        double dryPa = pressurePa - vapourPa;
        double saturated = MoistAir.humidityRatioKgPerKg(vapourPa, pressurePa);
        double saturatedPerK =
                AirConstants.VAPOUR_TO_DRY_AIR_MASS * pressurePa * saturation.slopePaPerK(bulbC) / (dryPa * dryPa);
        double bulbLatentKj = latentKj - latentFallKjPerK * bulbC;
        double airLatentKj = latentKj + VAPOUR_KJ_PER_K * airC - waterHeatKjPerK * bulbC;
        double surplusKj = bulbLatentKj * saturated - DRY_AIR_KJ_PER_K * (airC - bulbC) - humidityKgPerKg * airLatentKj;
        double surplusKjPerK = bulbLatentKj * saturatedPerK
                - latentFallKjPerK * saturated
                + DRY_AIR_KJ_PER_K
                + waterHeatKjPerK * humidityKgPerKg;
        return surplusKj / surplusKjPerK;
    }
}
