package rimeward.app;

import static rimeward.app.SizeWords.exact;
import static rimeward.app.SizeWords.three;

import java.util.Locale;
import java.util.stream.Collectors;
import rimeward.site.Circuit;
import rimeward.sizing.Areas;
import rimeward.sizing.Basis;
import rimeward.sizing.Cautions;
import rimeward.sizing.HeaterPlan;
import rimeward.sizing.House;
import rimeward.sizing.Input;
import rimeward.sizing.Inputs;
import rimeward.sizing.Measure;
import rimeward.sizing.Request;
import rimeward.sizing.Sheet;
import rimeward.sizing.Sourced;
import rimeward.sizing.Stages;

/** The heat-loss sheet for a person. A star marks what was assumed. */
final class SizeSheet {
    private final StringBuilder text = new StringBuilder();
    private final Sheet sheet;
    private final Request request;
    private final Inputs inputs;

    private SizeSheet(Sheet sheet) {
        this.sheet = sheet;
        request = sheet.request();
        inputs = request.inputs();
    }

    static String of(Sheet sheet) {
        SizeSheet told = new SizeSheet(sheet);
        told.taken();
        told.loss();
        told.heater();
        told.circuit();
        told.text.append(SizeWinter.of(sheet));
        told.settings();
        told.cautions();
        return told.text.toString();
    }

    private void taken() {
        text.append("Heat loss of ").append(request.shape().inWords()).append('\n');
        long assumed = sheet.assumed();
        if (assumed > 0) {
            text.append("* is assumed: ")
                    .append(assumed)
                    .append(" of ")
                    .append(inputs.each().size())
                    .append(
                            " numbers, and the sheet is a guess as far as they are. Give your own by the option in front.\n");
        }
        heading("What it rests on");
        inputs.each().forEach((input, number) -> {
            String unit = SizeWords.unit(input, request.tariff().currency());
            String star = number.isAssumed() ? "*" : "";
            line("%-25s %6s%-1s %-14s %s", input.option(), exact(number), star, unit, number.from());
        });
        if (!request.done().isEmpty()) {
            line(
                    "%-25s %s",
                    "--insulation",
                    request.done().stream().sorted().map(Measure::word).collect(Collectors.joining(", ")));
        }
    }

    private void loss() {
        House house = sheet.house();
        Areas areas = house.areas();
        heading("Heat loss, for each kelvin that it is warmer inside than outside");
        part(
                "roof and sides",
                three(areas.roofAndSidesM2()) + " m² × " + three(house.coverWPerM2K()) + " W/m²K",
                sheet.loss().roofAndSidesWPerK());
        part(
                "both ends",
                three(areas.endsM2()) + " m² × " + three(house.endsWPerM2K()) + " W/m²K",
                sheet.loss().endsWPerK());
        part(
                "draughts",
                three(areas.volumeM3()) + " m³ × " + three(house.airChangesPerH()) + " per h × "
                        + three(house.airWhPerM3K()) + " Wh/m³K",
                sheet.loss().draughtsWPerK());
        part(
                "ground edge",
                three(areas.edgeM()) + " m × " + three(house.edgeWPerMK()) + " W/mK",
                sheet.loss().edgeWPerK());
        part("together", three(areas.floorM2()) + " m² of floor", sheet.loss().totalWPerK());
        line(
                "The ground inside the edge is left out: in winter it gives a little heat, so the sheet is on the safe side there.");
    }

    private void part(String name, String how, double lossWPerK) {
        double sharePercent = 100 * lossWPerK / sheet.loss().totalWPerK();
        line("%-15s %-42s %6s W/K %4.0f %%", name, how, three(lossWPerK), sharePercent);
    }

    private void heater() {
        double outsideC = inputs.of(Input.OUTSIDE);
        heading("Heater");
        line(
                "to hold %s °C (the floor and %s K) at %s °C outside: %s W/K × %s K = %s W",
                Plain.number(request.heldC()),
                Plain.number(inputs.of(Input.HOLD_ABOVE)),
                Plain.number(outsideC),
                three(sheet.loss().totalWPerK()),
                Plain.number(request.heldC() - outsideC),
                three(sheet.neededW()));
        Sourced outside = inputs.find(Input.OUTSIDE).orElseThrow();
        if (outside.basis() != Basis.GIVEN) {
            line("    (%s; if a night was ever colder there, give it by --outside-C)", outside.from());
        }
        line(
                "and %s %% margin for clear sky, wind, wet air and a weak mains: %s W",
                Plain.number(inputs.of(Input.MARGIN)), three(sheet.heater().wantedW()));
        if (sheet.heater().wanted() instanceof Stages.Some wanted) {
            line(
                    "buy %s = %s W, each on its own relay, thermostat and cut-out (sizes that shops have, no source)",
                    SizeWords.inWords(wanted), Plain.number(wanted.totalW()));
            holds(wanted);
        } else {
            line("that is more than eight plug-in heaters give: ask a heating engineer, or insulate first");
        }
    }

    private void holds(Stages stages) {
        line(
                "    without any margin it would hold down to %s °C outside",
                SizeWords.tenth(sheet.holdsDownToC(stages.totalW())));
    }

    private void circuit() {
        HeaterPlan plan = sheet.heater();
        Circuit circuit = plan.circuit();
        heading("Circuit");
        line(
                "%s V × %s A × %s − %s W = %s W for hours on end",
                Plain.number(circuit.voltageV()),
                Plain.number(circuit.fuseA()),
                Plain.number(circuit.continuousFactor()),
                Plain.number(circuit.otherLoadW()),
                Plain.number(circuit.limitW()));
        line(
                "a plug has a fuse of %s A, %s W at the most (BS 1363, from memory); no stage is larger than %s W, for hours on end",
                Plain.number(HeaterPlan.PLUG_A),
                Plain.number(circuit.voltageV() * HeaterPlan.PLUG_A),
                Plain.number(HeaterPlan.plugW(circuit)));
        if (plan.fitting() instanceof Stages.Some fitting) {
            boolean other = !fitting.equals(plan.wanted());
            line("%s fit%s", SizeWords.inWords(fitting), other ? ", and are to be bought instead" : "");
        } else {
            tooMuch(plan);
        }
        line("A dryer is not counted: when the heater needs the circuit, the guard switches the dryer off first.");
    }

    private void tooMuch(HeaterPlan plan) {
        String limit = Plain.number(plan.circuit().limitW());
        if (plan.wanted() instanceof Stages.Some wanted) {
            line(
                    "TOO MUCH for this circuit: it carries %s W, and %s = %s W are to be bought",
                    limit, SizeWords.inWords(wanted), Plain.number(wanted.totalW()));
        } else {
            line("TOO MUCH for this circuit: it carries %s W, and %s W are needed", limit, three(plan.wantedW()));
        }
        plan.breakerA()
                .ifPresentOrElse(
                        breakerA -> line(
                                "  either a circuit of %s A (fixed wiring, an electrician's work),",
                                Plain.number(breakerA)),
                        () -> line("  no breaker up to 63 A would carry it: several circuits, by an electrician,"));
        line("  or less loss (see \"What would help\" below),");
        if (plan.most() instanceof Stages.Some most) {
            line("  or %s = %s W, which fit: %s", SizeWords.inWords(most), Plain.number(most.totalW()), left(most));
        }
    }

    private String left(Stages stages) {
        double leftPercent = 100 * (stages.totalW() / sheet.neededW() - 1);
        return leftPercent >= 0
                ? "a margin of " + (int) leftPercent + " % instead of " + Plain.number(inputs.of(Input.MARGIN)) + " %"
                : "too little, they hold " + Plain.number(request.heldC()) + " °C down to "
                        + SizeWords.tenth(sheet.holdsDownToC(stages.totalW())) + " °C outside only, without any margin";
    }

    private void settings() {
        heading(
                "For the settings: paste this over [tunnel]; the starred inputs make it a guess until the tunnel is learned");
        text.append(SizeToml.of(sheet));
    }

    private void cautions() {
        heading("Cautions");
        Cautions.HEATER.forEach(caution -> line("- %s", caution));
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
