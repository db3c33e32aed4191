package rimeward.sizing;

import java.util.List;
import rimeward.site.Tunnel;

/** What the sheet implies for {@code [tunnel]} in the settings. Capacities and coupling go by the floor, as in {@code config/tunnel.toml}. */
final class TunnelLines {
    /** Leaves, inner film and steel: 120 kJ/K over 24 m². Common practice, no source. */
    private static final double QUICK_J_PER_K_M2 = 5000;

    /** Pots, benches, slab and top soil: 4 MJ/K over 24 m². Common practice, no source. */
    private static final double MASS_J_PER_K_M2 = 4.0e6 / 24;

    /** 90 W/K over 24 m². Common practice, no source. */
    private static final double COUPLING_W_PER_K_M2 = 90.0 / 24;

    /** Surface resistance inside, heat flowing upwards, m² K/W; EN ISO 6946 table 7. */
    private static final double INSIDE_M2K_PER_W = 0.10;

    private TunnelLines() {}

    static Tunnel of(House house, Loss loss, double altitudeM) throws Refused {
        Areas areas = house.areas();
        double filmFraction = Math.max(0, 1 - house.coverWPerM2K() * INSIDE_M2K_PER_W);
        try {
            return new Tunnel(
                    round(areas.floorM2(), 0.1),
                    round(areas.volumeM3(), 0.1),
                    round(altitudeM, 1),
                    round(loss.totalWPerK(), 1),
                    round(areas.volumeM3() * house.airWhPerM3K() * 3600 + areas.floorM2() * QUICK_J_PER_K_M2, 1000),
                    round(areas.floorM2() * MASS_J_PER_K_M2, 10_000),
                    round(areas.floorM2() * COUPLING_W_PER_K_M2, 1),
                    round(filmFraction, 0.01));
        } catch (IllegalArgumentException e) {
            throw new Refused(
                    List.of("such a tunnel is none for Rimeward: " + e.getMessage() + "; check the dimensions"));
        }
    }

    private static double round(double value, double step) {
        return StrictMath.rint(value / step) * step;
    }
}
