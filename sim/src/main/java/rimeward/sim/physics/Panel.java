package rimeward.sim.physics;

import java.util.List;

/**
 * One part of a tunnel's outside, such as the film over the hoops or the twin-wall sheet of an end.
 *
 * @param areaM2 0.1…10000 m²
 */
public record Panel(CoverKind kind, double areaM2) {
    public Panel {
        Require.within("areaM2 of " + kind, areaM2, 0.1, 10_000);
    }

    /** Loss of all panels together with standard surfaces, W/K: the sum of area times loss, without leakage and ground. */
    public static double lossWPerK(List<Panel> panels) {
        double sumWPerK = 0;
        for (Panel panel : panels) {
            sumWPerK += panel.areaM2 * panel.kind.lossWPerM2K();
        }
        return sumWPerK;
    }
}
