package rimeward.app;

import java.math.BigDecimal;
import java.util.Locale;
import rimeward.site.Tunnel;
import rimeward.sizing.Sheet;

/** The table {@code [tunnel]} of the settings, as the sheet implies it. */
final class SizeToml {
    private SizeToml() {}

    static String of(Sheet sheet) {
        Tunnel tunnel = sheet.tunnel();
        return "[tunnel]\n"
                + line("floor_area_m2", tunnel.floorAreaM2(), "width × length")
                + line("volume_m3", tunnel.volumeM3(), "end's area × length")
                + line("altitude_m", tunnel.altitudeM(), "--altitude-m")
                + line("heat_loss_W_per_K", tunnel.heatLossWPerK(), "roof and sides, ends, draughts and ground edge")
                + line(
                        "air_capacity_J_per_K",
                        tunnel.airCapacityJPerK(),
                        "air, and 5 kJ/K of film, steel, leaves for each m² (assumed)")
                + line(
                        "mass_capacity_J_per_K",
                        tunnel.massCapacityJPerK(),
                        "167 kJ/K of pots, benches, soil for each m² of floor (assumed)")
                + line("mass_coupling_W_per_K", tunnel.massCouplingWPerK(), "3.75 W/K for each m² of floor (assumed)")
                + line("film_fraction", tunnel.filmFraction(), "1 − cover's loss × 0.10 m²K/W (EN ISO 6946)");
    }

    private static String line(String key, double value, String from) {
        String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return String.format(Locale.ROOT, "%-35s # %s\n", key + " = " + number, from);
    }
}
