package rimeward.app;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Sensor;
import rimeward.site.Site;
import rimeward.site.Wiring;

/** How everything is attached, a line each. */
final class WiringSheet {
    private WiringSheet() {}

    static String of(Site site) {
        StringBuilder text = new StringBuilder("\nWiring\n");
        if (!WiringAdvice.isReal(site)) {
            return text.append("  nothing is attached: settings for the simulator, or not wired yet\n")
                    .toString();
        }
        rows(site).forEach((what, where) -> text.append(String.format(Locale.ROOT, "  %-22s %s\n", what, where)));
        return text.toString();
    }

    private static Map<String, String> rows(Site site) {
        Map<String, String> rows = new LinkedHashMap<>();
        for (Sensor sensor : site.sensors()) {
            rows.put(sensor.id(), sensor.attached().inWords());
        }
        for (Machine machine : site.machines()) {
            rows.put(machine.id() + ", relay", relay(machine.wiring()));
            rows.put(machine.id() + ", power", machine.meter().inWords());
        }
        if (site.drying() instanceof Drying.Dryer dryer && !Double.isInfinite(dryer.tankL())) {
            rows.put("tank float", dryer.tankFloat().inWords());
        }
        rows.put("door switch", site.door().inWords());
        return rows;
    }

    private static String relay(Wiring wiring) {
        return wiring instanceof Wiring.GpioLine at
                ? at.chip() + " line " + at.line() + (at.activeLow() ? ", active low, " : ", active high, ")
                        + (at.closedAtStart() ? "closed" : "open") + " at start, "
                        + (at.closedAtStop() ? "closed" : "open") + " at stop"
                : "not wired";
    }
}
