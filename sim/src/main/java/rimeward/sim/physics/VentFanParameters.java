package rimeward.sim.physics;

/**
 * A fan that changes the tunnel's air for outside air. Its own heat leaves with the air.
 *
 * @param airflowM3PerH 0…50000 m³/h; 0 for no fan
 * @param powerW 0…2000 W
 */
public record VentFanParameters(double airflowM3PerH, double powerW) {
    public VentFanParameters {
        Require.within("airflowM3PerH of the vent fan", airflowM3PerH, 0, 50_000);
        Require.within("powerW of the vent fan", powerW, 0, 2000);
    }

    public boolean isFitted() {
        return airflowM3PerH > 0;
    }

    public static VentFanParameters none() {
        return new VentFanParameters(0, 0);
    }
}
