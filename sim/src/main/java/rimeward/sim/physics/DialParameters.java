package rimeward.sim.physics;

/**
 * A bimetal thermostat with a dial. Its marks are unknown to the grower (often a snowflake and 1 to 6); this is what it truly does.
 *
 * @param opensC bimetal temperature at which it stops the heater, −5…40 °C
 * @param differentialK how far the bimetal must cool before it starts it again, 0.1…10 K
 * @param lagS time constant by which the bimetal follows the air, 1…3600 s
 */
public record DialParameters(double opensC, double differentialK, double lagS) {
    public DialParameters {
        Require.within("opensC of the dial", opensC, -5, 40);
        Require.within("differentialK of the dial", differentialK, 0.1, 10);
        Require.within("lagS of the dial", lagS, 1, 3600);
    }
}
