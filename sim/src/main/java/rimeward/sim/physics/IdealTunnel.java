package rimeward.sim.physics;

/**
 * The same tunnel with machines that obey, put into any state and let go: for asking what would come of a little more heat from here. Its
 * heater gives any power, its dryer runs when told, warm from the first second and without ice, tank or own controls; its own losses of
 * starting and stopping are so left out. For one thread.
 */
public final class IdealTunnel {
    /** How many numbers a state has. */
    public static final int NUMBERS = 10;

    /** Places of some of them. */
    public static final int AIR = 0;

    public static final int MASS = 1;
    public static final int ELEMENT = 2;
    public static final int HUMIDITY = 3;

    private final Tunnel tunnel;

    public IdealTunnel(TunnelParameters parameters, MachineParameters machines, StartState start) {
        tunnel = new Tunnel(parameters, machines, start);
        tunnel.heater().modulate(0);
        tunnel.dryer().idealise();
    }

    /** Where it is now: air, mass and element in °C, kg/kg of vapour; then what only the tunnel itself need understand. */
    public double[] state() {
        State now = tunnel.state();
        return new double[] {
            now.airC,
            now.massC,
            now.elementC,
            now.humidityKgPerKg,
            now.filmWaterKg,
            now.filmFrostKg,
            now.mediumWaterKg,
            now.filmC,
            now.filmOutsideC,
            now.tankKg
        };
    }

    /**
     * Puts it there.
     *
     * @param dries whether its dryer runs from now on
     * @param rotorRiseK how much warmer than the air the dryer's inside is
     */
    public void put(double[] state, boolean dries, double rotorRiseK) {
        State now = tunnel.state();
        now.airC = state[AIR];
        now.massC = state[MASS];
        now.elementC = state[ELEMENT];
        now.humidityKgPerKg = state[HUMIDITY];
        now.filmWaterKg = state[4];
        now.filmFrostKg = state[5];
        now.mediumWaterKg = state[6];
        now.filmC = state[7];
        now.filmOutsideC = state[8];
        now.tankKg = state[9];
        now.coilIceKg = 0;
        now.dryerC = now.airC + rotorRiseK;
        now.bimetalC = now.airC;
        now.saturationKgPerKg =
                WetSurface.saturatedKgPerKg(now.airC, tunnel.outside().pressurePa());
        tunnel.dryer().contact(dries);
        tunnel.resume();
    }

    public void heat(double powerW) {
        tunnel.heater().modulate(powerW);
    }

    /** What it truly is, to be read; and weather, door and fan, to be set. */
    public Tunnel tunnel() {
        return tunnel;
    }
}
