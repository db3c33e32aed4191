package rimeward.sim.device;

/**
 * How a sensor differs from the truth.
 *
 * @param lagS time constant in still air, s
 * @param offsetK constant error of its temperature, K
 * @param noiseK standard deviation of its temperature's noise, K
 * @param resolutionK its temperature's last digit, K
 * @param driftKPerDay growth of its temperature's error, K/day
 * @param offsetPercent constant error of its humidity, % RH
 * @param noisePercent standard deviation of its humidity's noise, % RH
 * @param resolutionPercent its humidity's last digit, % RH
 */
public record SensorVices(
        double lagS,
        double offsetK,
        double noiseK,
        double resolutionK,
        double driftKPerDay,
        double offsetPercent,
        double noisePercent,
        double resolutionPercent) {
    public SensorVices {
        within("lagS", lagS, 0, 1800);
        within("offsetK", offsetK, -10, 10);
        within("noiseK", noiseK, 0, 5);
        within("resolutionK", resolutionK, 0.001, 2);
        within("driftKPerDay", driftKPerDay, -5, 5);
        within("offsetPercent", offsetPercent, -30, 30);
        within("noisePercent", noisePercent, 0, 10);
        within("resolutionPercent", resolutionPercent, 0.001, 5);
    }

    /** A small digital sensor in a louvred tube: two minutes' lag, a little noise. Common practice, no source. */
    public static SensorVices usual() {
        return new SensorVices(120, 0, 0.03, 0.01, 0, 0, 0.3, 0.1);
    }

    /** Tells the truth at once, to its last digit. */
    public static SensorVices none() {
        return new SensorVices(0, 0, 0, 0.001, 0, 0, 0, 0.001);
    }

    private static void within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "a sensor's " + name + " is " + value + ", must be " + least + "…" + most);
        }
    }
}
