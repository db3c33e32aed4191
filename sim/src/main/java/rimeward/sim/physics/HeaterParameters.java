package rimeward.sim.physics;

import java.util.List;

/**
 * A fan heater with one or more stages on one element, behind its own dial thermostat and over-temperature cut-out.
 *
 * @param stagesW electric power of each stage, first to close first, 10…20000 W
 * @param elementJPerK heat capacity of element and casing, 50…1e5 J/K
 * @param blownWPerK from the element to the air while its fan turns, 1…500 W/K
 * @param stillWPerK the same without the fan, 0.1…500 W/K
 * @param dial its own thermostat
 * @param cutOutC element temperature at which the over-temperature cut-out opens, 60…500 °C
 * @param cutOutResetC and closes again, below {@code cutOutC}
 */
public record HeaterParameters(
        List<Double> stagesW,
        double elementJPerK,
        double blownWPerK,
        double stillWPerK,
        DialParameters dial,
        double cutOutC,
        double cutOutResetC) {
    public HeaterParameters {
        stagesW = List.copyOf(stagesW);
        Require.that(!stagesW.isEmpty(), "a heater needs at least one stage");
        for (double stageW : stagesW) {
            Require.within("stagesW", stageW, 10, 20_000);
        }
        Require.within("elementJPerK", elementJPerK, 50, 1e5);
        Require.within("blownWPerK", blownWPerK, 1, 500);
        Require.within("stillWPerK", stillWPerK, 0.1, 500);
        Require.within("cutOutC", cutOutC, 60, 500);
        Require.within("cutOutResetC", cutOutResetC, 30, cutOutC - 1);
    }
}
