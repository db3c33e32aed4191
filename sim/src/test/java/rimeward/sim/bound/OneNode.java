package rimeward.sim.bound;

import java.util.Arrays;

/** A tunnel of one lump under 0 °C outside, whose every answer can be written down: C dT/dt = P − U T. */
final class OneNode {
    static final double U_W_PER_K = 100;
    static final double FLOOR_C = 3;

    /** Of a quarter of an hour: 900 s over a time constant of 18 000 s. */
    static final double KEEPS = Math.exp(-0.05);

    static final double K_PER_W = (1 - KEEPS) / U_W_PER_K;
    private static final double MOST_W = 3000;

    private OneNode() {}

    /** The path without any heat, from a temperature. */
    static Path cooling(double startC, int quarters) {
        Quarter[] seen = new Quarter[quarters];
        Tangent[] tangents = new Tangent[quarters];
        for (int k = 0; k < quarters; k++) {
            double beforeC = startC * Math.pow(KEEPS, k);
            double[] end = new double[10];
            end[0] = beforeC * KEEPS;
            seen[k] = new Quarter(end, beforeC * part(1.0 / 6), beforeC * part(0.5), end[0], 50, 0);
            tangents[k] = tangent();
        }
        return new Path(Schedule.idle(quarters), seen, tangents);
    }

    private static double part(double share) {
        return Math.pow(KEEPS, share);
    }

    private static Tangent tangent() {
        double[][] onState = new double[Tangent.STATES][Tangent.SEEN];
        onState[0] = seen(KEEPS, part(1.0 / 6), part(0.5), KEEPS);
        double[][] onInput = new double[Tangent.INPUTS][Tangent.SEEN];
        onInput[0] = seen(K_PER_W, (1 - part(1.0 / 6)) / U_W_PER_K, (1 - part(0.5)) / U_W_PER_K, K_PER_W);
        return new Tangent(onState, onInput, new double[Tangent.INPUTS]);
    }

    private static double[] seen(double air, double early, double middle, double end) {
        return new double[] {air, 0, 0, 0, early, middle, end, 0};
    }

    /** The floor, and nothing asked of the humidity. */
    static Kept kept(int quarters) {
        double[] warm = new double[quarters];
        Arrays.fill(warm, 99);
        return new Kept(FLOOR_C, 82, warm, warm, new double[quarters], Schedule.idle(quarters));
    }

    static Box box(int quarters) {
        double[][] most = new double[Tangent.INPUTS][quarters];
        Arrays.fill(most[0], MOST_W);
        return new Box(new double[Tangent.INPUTS][quarters], most, MOST_W, 0);
    }
}
