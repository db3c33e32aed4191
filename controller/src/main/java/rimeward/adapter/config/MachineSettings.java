package rimeward.adapter.config;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rimeward.site.Circuit;
import rimeward.site.Contact;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.Machine;
import rimeward.site.Role;
import rimeward.site.Venting;

/** Reads {@code [heater]}, {@code [dryer]} and {@code [vent_fan]}, and what must hold between them. Empty where there are faults. */
record MachineSettings(Optional<Heater> heater, Optional<Drying> drying, Optional<Venting> venting) {

    /** A machine and the table it was read from. */
    private record Fitted(TableReader table, Machine machine) {}

    static MachineSettings read(TableReader top, Optional<Circuit> circuit, LineUse lines) {
        List<Fitted> fitted = new ArrayList<>();
        Optional<Heater> heater = heater(top.table("heater"), fitted);
        Optional<Drying> drying = top.findTable("dryer")
                .map(table -> dryer(table, fitted, lines))
                .orElse(Optional.of(new Drying.NoDryer()));
        Optional<Venting> venting =
                top.findTable("vent_fan").map(table -> fan(table, fitted)).orElse(Optional.of(new Venting.NoVentFan()));
        namesDiffer(fitted);
        fitted.forEach(each -> {
            lines.relay(each.table, each.machine.wiring());
            lines.meter(each.table, each.machine.meter());
        });
        double dryerFanW = drying.map(MachineSettings::fanW).orElse(0.0);
        circuit.ifPresent(some -> eachFitsAlone(fitted, some, dryerFanW));
        return new MachineSettings(heater, drying, venting);
    }

    private static Optional<Heater> heater(TableReader table, List<Fitted> fitted) {
        double deadTimeS = table.get("dead_time_s", Kinds.number(0, 1800));
        List<Machine> stages = new ArrayList<>();
        for (TableReader stage : table.someTables("stage", "without one nothing can keep the floor")) {
            machine(stage, Role.HEATER_STAGE, fitted).ifPresent(stages::add);
        }
        return table.whenSound(() -> new Heater(stages, deadTimeS));
    }

    private static Optional<Drying> dryer(TableReader table, List<Fitted> fitted, LineUse lines) {
        Optional<Machine> machine = machine(table, Role.DRYER, fitted);
        DryerKind kind = table.get("kind", Kinds.word(DryerKind.class));
        double fanW = table.get("fan_W", Kinds.number(0, 20_000));
        double runOnS = table.get("run_on_s", Kinds.number(0, 1800));
        double minimumAirC = table.celsius("minimum_air", -10, 20);
        double collectionLPerH = table.get("collection_L_per_h", Kinds.number(0.01, 20));
        double tankL = tankL(table);
        Contact tankFloat = tankFloat(table);
        lines.contact(table, "float", tankFloat);
        machine.ifPresent(some -> {
            if (fanW > some.ratedW()) {
                table.fault("fan_W", "is more than the whole dryer's rated_W", "give the fan's share alone");
            }
        });
        return table.whenSound(() -> new Drying.Dryer(
                machine.orElseThrow(), kind, fanW, runOnS, minimumAirC, collectionLPerH, tankL, tankFloat));
    }

    /** Litres, or no end to them where a hose leads to a drain; the grower must say which. */
    private static double tankL(TableReader table) {
        boolean hose = table.get("hose", Kinds.yesNo(), false);
        if (!hose) {
            return table.get("tank_L", Kinds.number(0.5, 1000));
        }
        if (table.has("tank_L")) {
            table.fault("tank_L", "contradicts hose = true", "keep one of the two");
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Fitted or not; how it is attached is another matter, and a simulated tunnel needs none of it. */
    private static Contact tankFloat(TableReader table) {
        boolean fitted = table.get("tank_float", Kinds.yesNo());
        Optional<TableReader> attached = table.findTable("float");
        if (attached.isEmpty()) {
            return fitted ? new Contact.NotAttached() : new Contact.NotFitted();
        }
        if (!fitted) {
            table.fault("tank_float", "contradicts the table float below it", "set it true, or remove the table");
        }
        return InputTable.read(attached.get(), "the tank is full")
                .<Contact>map(Contact.OnLine::new)
                .orElse(new Contact.NotAttached());
    }

    private static Optional<Venting> fan(TableReader table, List<Fitted> fitted) {
        Optional<Machine> machine = machine(table, Role.VENT_FAN, fitted);
        return machine.map(Venting.VentFan::new);
    }

    private static Optional<Machine> machine(TableReader table, Role role, List<Fitted> fitted) {
        Optional<Machine> machine = MachineTable.read(table, role);
        machine.ifPresent(some -> fitted.add(new Fitted(table, some)));
        return machine;
    }

    private static double fanW(Drying drying) {
        return drying instanceof Drying.Dryer dryer ? dryer.fanW() : 0;
    }

    private static void namesDiffer(List<Fitted> fitted) {
        Set<String> ids = new HashSet<>();
        for (Fitted each : fitted) {
            if (!ids.add(each.machine.id())) {
                each.table.fault("id", "is the name of another machine too", "give each its own");
            }
        }
    }

    /** What no shedding could help: one machine that is too much by itself. The dryer's fan runs on while a stage starts. */
    private static void eachFitsAlone(List<Fitted> fitted, Circuit circuit, double dryerFanW) {
        double limitW = circuit.limitW();
        for (Fitted each : fitted) {
            double besideW = each.machine.role() == Role.HEATER_STAGE ? dryerFanW : 0;
            if (each.machine.ratedW() + besideW > limitW) {
                String beside = besideW > 0 ? " with the dryer's fan (" + Shown.number(besideW) + " W)" : "";
                each.table.fault(
                        "rated_W",
                        "is alone" + beside + " more than the circuit carries for hours on end: "
                                + Shown.number(circuit.voltageV()) + " V × " + Shown.number(circuit.fuseA()) + " A × "
                                + Shown.number(circuit.continuousFactor()) + " − " + Shown.number(circuit.otherLoadW())
                                + " W = " + Shown.number(limitW) + " W",
                        "fit a smaller machine, or have a stronger circuit put in");
            }
        }
    }
}
