package rimeward.sim.physics;

import java.util.List;

/**
 * The 24 m² tunnel at Hallin Rigg, an invented upland place, and its machines. All values are common practice, no source; together
 * they are held to the known magnitudes by a reference test.
 */
public final class Defaults {
    /** 6 kg of leaves, 15 kg of inner film, 120 kg of steel in hoops and benches: 25 + 35 + 60 kJ/K. */
    private static final double QUICK_J_PER_K = 120_000;

    private Defaults() {}

    /** Bubble-lined film over hoops, 6 m by 4 m and 2.2 m high, with twin-wall ends; benches with pots on a gravelled floor. */
    public static TunnelParameters tunnel() {
        return new TunnelParameters(
                List.of(new Panel(CoverKind.BUBBLE_LINED_FILM, 37), new Panel(CoverKind.TWIN_WALL, 13)),
                24,
                41,
                QUICK_J_PER_K,
                4.0e6,
                90,
                18,
                7,
                180,
                5000,
                9,
                160,
                90,
                0.3,
                0.7,
                310,
                List.of(
                        new BenchParameters("middle bench", 0, 0),
                        new BenchParameters("door bench", -0.2, -0.04),
                        new BenchParameters("north bench", -0.4, -0.07),
                        new BenchParameters("top shelf", 0.3, 0.05)));
    }

    /** Two stages of 1 kW behind a dial set as a backstop. */
    public static HeaterParameters heater() {
        return heater(List.of(1000.0, 1000.0), new DialParameters(11, 2.5, 180));
    }

    public static HeaterParameters heater(List<Double> stagesW, DialParameters dial) {
        return new HeaterParameters(stagesW, 1200, 20, 4, dial, 150, 90);
    }

    /** A sorption dryer of the 600 W class. */
    public static DryerParameters.Sorption sorptionDryer() {
        DryerCase body = new DryerCase(40, 3000, 12, 3, 1, 5, new HumidistatParameters(45, 10, 1800, 300));
        return new DryerParameters.Sorption(body, 560, 0.42, 5, 0.02, 30, 240);
    }

    /** A compressor dryer of 20 kg a day. */
    public static DryerParameters.Compressor compressorDryer() {
        DryerCase body = new DryerCase(45, 5000, 25, 4, 3, 5, new HumidistatParameters(50, 10, 0, 300));
        return new DryerParameters.Compressor(body, 20, 1.6, 14, 0.4, 600, 260, 180);
    }

    public static MachineParameters machines() {
        return new MachineParameters(heater(), sorptionDryer(), VentFanParameters.none());
    }

    /** A damp evening in autumn. */
    public static StartState evening() {
        return new StartState(8, 9, 85, 140, 0);
    }
}
