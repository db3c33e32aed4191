package rimeward.app;

import java.util.Locale;
import java.util.stream.Collectors;
import rimeward.site.Circuit;
import rimeward.site.Degrees;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Place;
import rimeward.site.Plant;
import rimeward.site.Sensor;
import rimeward.site.Site;
import rimeward.site.Targets;
import rimeward.site.Tariff;

/** The settings retold for a person, with what follows from them. */
final class SiteSheet {
    private final StringBuilder text = new StringBuilder();
    private final Site site;

    private SiteSheet(Site site) {
        this.site = site;
    }

    static String of(Site site) {
        SiteSheet sheet = new SiteSheet(site);
        sheet.text.append(site.name()).append(" (").append(site.id()).append(")\n");
        sheet.plants();
        sheet.targets();
        sheet.sensors();
        sheet.machines();
        sheet.text.append(WiringSheet.of(site));
        sheet.circuit();
        sheet.heat();
        sheet.text.append(ForecastSheet.of(site));
        sheet.text.append(MessagingSheet.of(site));
        sheet.text.append(PageSheet.of(site));
        return sheet.text.toString();
    }

    private void plants() {
        heading("Plants");
        for (Plant plant : site.plants()) {
            String floor = plant.minimumC() == site.floorC() ? "sets the floor" : "";
            line("%-24s %5s °C  %s", plant.name(), Plain.number(plant.minimumC()), floor);
        }
    }

    private void targets() {
        Targets targets = site.targets();
        double onC = site.floorC() + targets.guardMarginK();
        heading("Targets");
        line("alerts tell temperatures in %s", site.degrees() == Degrees.CELSIUS ? "°C" : "°F");
        line(
                "heat is on at %s °C at the latest, off at %s °C; none runs above %s °C",
                Plain.number(onC), Plain.number(onC + targets.differentialK()), Plain.number(targets.hotC()));
        if (site.drying() instanceof Drying.Dryer dryer) {
            line(
                    "dryer on at %s %%, off at %s %%; locked out below %s °C",
                    Plain.number(targets.dryOnPercent()),
                    Plain.number(targets.dryOffPercent()),
                    Plain.number(dryer.minimumAirC()));
        }
    }

    private void sensors() {
        heading("Sensors");
        for (Sensor sensor : site.sensors()) {
            String where = sensor.place() instanceof Place.Bench bench ? bench.name() : "outside";
            String humidity = sensor.hasHumidity() ? ", ± " + Plain.number(sensor.uncertaintyPercent()) + " %" : "";
            line("%-14s %-30s ± %s K%s", sensor.id(), where, Plain.number(sensor.uncertaintyK()), humidity);
        }
    }

    private void machines() {
        heading("Machines");
        for (Machine machine : site.machines()) {
            String role = machine.role().name().toLowerCase(Locale.ROOT).replace('_', ' ');
            String feedback = machine.hasPowerFeedback() ? "power seen" : "power not seen";
            line("%-14s %-13s %5s W  %s", machine.id(), role, Plain.number(machine.ratedW()), feedback);
        }
        if (site.drying() instanceof Drying.Dryer dryer) {
            String tank =
                    Double.isInfinite(dryer.tankL()) ? "hose to a drain" : Plain.number(dryer.tankL()) + " L tank";
            line(
                    "the dryer: %s, %s L/h at 10 °C and 80 %%, %s",
                    dryer.kind().name().toLowerCase(Locale.ROOT), Plain.number(dryer.collectionLPerH()), tank);
        }
    }

    private void circuit() {
        Circuit circuit = site.circuit();
        Capacity capacity = Capacity.of(site);
        heading("Circuit");
        line(
                "%s V × %s A × %s − %s W = %s W for hours on end",
                Plain.number(circuit.voltageV()),
                Plain.number(circuit.fuseA()),
                Plain.number(circuit.continuousFactor()),
                Plain.number(circuit.otherLoadW()),
                Plain.number(capacity.limitW()));
        String sum = site.machines().stream()
                .map(machine -> Plain.number(machine.ratedW()))
                .collect(Collectors.joining(" + "));
        line(
                "all machines: %s = %s W, %s",
                sum,
                Plain.number(capacity.allW()),
                capacity.allW() <= capacity.limitW() ? "which fits" : "which is too much at once");
    }

    private void heat() {
        Capacity capacity = Capacity.of(site);
        double heatLossWPerK = site.tunnel().heatLossWPerK();
        heading("Heat");
        line(
                "loses %s W per kelvin above outside (%s W/K for each m² of floor)",
                Plain.number(heatLossWPerK),
                Plain.number(heatLossWPerK / site.tunnel().floorAreaM2()));
        holds("the heater", capacity.heaterW(), capacity.heaterHoldsC());
        if (capacity.heaterAndDryerW() > capacity.heaterW()) {
            holds("heater and dryer", capacity.heaterAndDryerW(), capacity.bothHoldC());
        }
        line("a kilowatt-hour costs %s, by the clock of %s", price(site.tariff()), site.zone());
    }

    private void holds(String who, double powerW, double outsideC) {
        line(
                "%s, %s W, can hold %s °C down to %s °C outside",
                who, Plain.number(powerW), Plain.number(site.floorC()), Plain.number(outsideC));
    }

    private static String price(Tariff tariff) {
        if (tariff instanceof Tariff.DayNight price) {
            return Plain.number(price.dayPerKWh()) + " " + price.currency() + ", from "
                    + Plain.clock(price.nightFromMinute()) + " to " + Plain.clock(price.nightToMinute()) + " "
                    + Plain.number(price.nightPerKWh());
        }
        return tariff instanceof Tariff.Flat price
                ? Plain.number(price.perKWh()) + " " + price.currency()
                : "by the hour, in " + tariff.currency();
    }

    private void heading(String heading) {
        text.append('\n').append(heading).append('\n');
    }

    private void line(String format, Object... parts) {
        text.append("  ")
                .append(String.format(Locale.ROOT, format, parts).stripTrailing())
                .append('\n');
    }
}
