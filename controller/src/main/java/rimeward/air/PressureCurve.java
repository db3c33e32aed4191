package rimeward.air;

import java.util.function.DoubleUnaryOperator;

/**
 * A saturation curve tabulated in steps of 0.25 K from −60 to 90 °C. Error against the formula at most 1e-8 of the pressure and
 * 1e-6 of the slope (both tested). Temperatures outside are clamped to the ends.
 */
final class PressureCurve {

    static final double MIN_C = -60.0;
    static final double MAX_C = 90.0;
    private static final double CELLS_PER_K = 4.0;
    private static final int CELLS = (int) ((MAX_C - MIN_C) * CELLS_PER_K);

    private final CubicTable table;

    PressureCurve(DoubleUnaryOperator pressurePa, DoubleUnaryOperator slopePaPerK) {
        int nodes = CELLS + 1;
        double[] tC = new double[nodes];
        double[] pa = new double[nodes];
        double[] paPerK = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            tC[i] = MIN_C + i / CELLS_PER_K;
            pa[i] = pressurePa.applyAsDouble(tC[i]);
            paPerK[i] = slopePaPerK.applyAsDouble(tC[i]);
        }
        table = new CubicTable(tC, pa, paPerK);
    }

    double pressurePa(double tC) {
        double position = position(tC);
        int cell = cell(position);
        return table.value(cell, position - cell);
    }

    double slopePaPerK(double tC) {
        double position = position(tC);
        int cell = cell(position);
        return table.slopePerCell(cell, position - cell) * CELLS_PER_K;
    }

    /** In cells; a NaN stays one. Comparisons, because they are seldom true: min and max would keep each lookup waiting. */
    private static double position(double tC) {
        if (tC < MIN_C) {
            return 0;
        }
        return tC > MAX_C ? CELLS : (tC - MIN_C) * CELLS_PER_K;
    }

    private static int cell(double position) {
        return Math.min((int) position, CELLS - 1);
    }
}
