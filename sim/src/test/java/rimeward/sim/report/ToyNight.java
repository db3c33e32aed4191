package rimeward.sim.report;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import rimeward.alert.AlertKind;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.sim.run.AlertEvent;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.FaultNote;
import rimeward.sim.run.LawLabel;
import rimeward.sim.run.MachineUse;
import rimeward.sim.run.Quantity;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.ScenarioHeader;
import rimeward.sim.run.Shortfall;
import rimeward.sim.run.Summary;
import rimeward.sim.run.SwitchEvent;
import rimeward.sim.run.TraceBuilder;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** A made-up run: one node of heat, two switched machines. Good enough to draw, and for nothing else. */
final class ToyNight {
    static final long START_S = 1_767_711_600; // Tue 6 Jan 2026 16:00 at +01:00
    static final ZoneOffset OFFSET = ZoneOffset.ofHours(1);
    private static final int STEP_S = 60;

    private final String law;
    private final int hours;
    private final boolean fuseBlows;
    private final TraceBuilder trace = new TraceBuilder(ToySite.MACHINES);
    private final List<SwitchEvent> switches = new ArrayList<>();
    private final List<AlertEvent> alerts = new ArrayList<>();
    private double benchC = 9;
    private double rhPercent = 84;
    private double lowestC = 99;
    private long lowestS;
    private long belowS;
    private long gapS;
    private double heaterKWh;
    private double dryerKWh;
    private int relays;

    private ToyNight(String law, int hours, boolean fuseBlows) {
        this.law = law;
        this.hours = hours;
        this.fuseBlows = fuseBlows;
    }

    static Comparison comparison(int hours, boolean fuseBlows, String... laws) {
        long faultS = START_S + 10 * 3600;
        List<FaultNote> faults =
                fuseBlows ? List.of(new FaultNote(faultS, faultS + 7200, "the fuse of heater-1 is blown")) : List.of();
        ScenarioHeader header = new ScenarioHeader(
                "toy",
                "A toy night at Hallin Rigg",
                "Made up to try the page: three cold nights, the second the coldest.",
                "none; a sine",
                START_S,
                hours * 3600L,
                5,
                7,
                OFFSET,
                faults);
        List<RunResult> results = new ArrayList<>();
        for (String law : laws) {
            results.add(new ToyNight(law, hours, fuseBlows).run());
        }
        return new Comparison(header, ToySite.of(), results, List.of());
    }

    private RunResult run() {
        Site site = ToySite.of();
        for (int i = 0; i < hours * 60; i++) {
            step(site, START_S + (long) i * STEP_S);
        }
        return new RunResult(
                new LawLabel(law, "a toy of " + law, law.equals("duty")), summary(), trace.build(), switches, alerts);
    }

    private void step(Site site, long atS) {
        double day = (atS - START_S) / 86_400.0;
        double outC = -1 - day * 1.2 + 6 * StrictMath.cos(2 * StrictMath.PI * (day + 0.08)) + (day > 2 ? 3 : 0);
        double sunW = StrictMath.max(0, 160 * StrictMath.cos(2 * StrictMath.PI * (day + 0.15)) - 60);
        boolean fuse = fuseBlows && atS >= START_S + 36_000 && atS < START_S + 43_200;
        int wanted = wanted(outC);
        int changed = wanted ^ relays;
        for (int m = 0; m < ToySite.MACHINES; m++) {
            if ((changed >> m & 1) != 0) {
                boolean on = (wanted >> m & 1) != 0;
                Reason why = m == 2
                        ? new Reason(on ? Cause.DAMP : Cause.DRY_ENOUGH, rhPercent, on ? 80 : 70)
                        : new Reason(on ? Cause.COLD : Cause.WARM_ENOUGH, benchC, on ? 5 : 6);
                switches.add(new SwitchEvent(atS, m, site.machines().get(m).id(), on, why, false));
            }
        }
        relays = wanted;
        alarm(atS, fuse);
        double w0 = (relays & 1) != 0 && !fuse ? 1000 : 0;
        double w1 = (relays & 2) != 0 ? 1000 : 0;
        double dryW = (relays & 4) != 0 ? 600 : 0;
        double leakW = 85 * (benchC - outC);
        benchC += (w0 + w1 + dryW * 1.2 + 18 * sunW - leakW) * STEP_S / 900_000.0;
        rhPercent += (dryW > 0 ? -0.13 : 0.06) - sunW / 2000 + (rhPercent > 92 ? -0.06 : 0);
        count(atS, w0, w1, dryW);
        row(atS, outC, sunW, w0, w1, dryW);
    }

    private int wanted(double outC) {
        boolean dry = rhPercent > 80 || ((relays & 4) != 0 && rhPercent > 70);
        boolean cold = benchC < 5 || ((relays & 1) != 0 && benchC < 6);
        boolean colder = benchC < 4.6 || ((relays & 2) != 0 && benchC < 5.4);
        return switch (law) {
            case "duty" -> ((cold && !dry) || colder ? 1 : 0) | (colder ? 2 : 0) | (dry ? 4 : 0);
            case "thermostat" -> cold ? 3 : 0;
            case "dryer-alone" -> dry ? 4 : 0;
            case "weak" -> cold ? 1 : 0;
            default -> outC < 0 ? 3 : dry ? 4 : 0;
        };
    }

    private void alarm(long atS, boolean fuse) {
        if (fuse && alerts.isEmpty() && (relays & 1) != 0) {
            alerts.add(new AlertEvent(
                    atS + 600,
                    AlertKind.HEAT_NOT_ARRIVING,
                    "heater-1",
                    true,
                    "heater-1 is switched on but gives no heat. Check its plug, fuse, RCD and dial."));
        }
        if (!fuse && alerts.size() == 1) {
            alerts.add(new AlertEvent(atS, AlertKind.HEAT_NOT_ARRIVING, "heater-1", false, "over"));
        }
    }

    private void count(long atS, double w0, double w1, double dryW) {
        heaterKWh += (w0 + w1) * STEP_S / 3.6e6;
        dryerKWh += dryW * STEP_S / 3.6e6;
        if (benchC < lowestC) {
            lowestC = benchC;
            lowestS = atS;
        }
        belowS += benchC < 4 ? STEP_S : 0;
    }

    private void row(long atS, double outC, double sunW, double w0, double w1, double dryW) {
        double dewC = benchC - (100 - rhPercent) / 5;
        boolean needed = benchC < 6;
        boolean gap = needed && w0 + w1 + dryW == 0 && law.equals("dryer-alone");
        gapS += gap ? STEP_S : 0;
        Holder holder = !needed ? Holder.NOT_NEEDED : dryW > 0 && w1 == 0 ? Holder.DRYER : Holder.HEATER;
        trace.time(atS)
                .put(Quantity.OUTSIDE_C, outC)
                .put(Quantity.COLDEST_BENCH_C, benchC)
                .put(Quantity.SUN_W_PER_M2, sunW)
                .put(Quantity.FILM_C, outC + 0.35 * (benchC - outC))
                .put(Quantity.DEW_POINT_C, dewC)
                .put(Quantity.RH_PERCENT, rhPercent)
                .judged(benchC - 0.3)
                .power(0, w0)
                .power(1, w1)
                .power(2, dryW)
                .control(RelaySet.of(relays), holder, Trust.FULL)
                .truth(true, needed, gap, false)
                .endRow();
    }

    private Summary summary() {
        Shortfall shortfall =
                belowS == 0 ? new Shortfall.None() : new Shortfall.Missing(4 - lowestC, lowestS, 85 * (4 - lowestC));
        List<MachineUse> uses = new ArrayList<>();
        for (int m = 0; m < ToySite.MACHINES; m++) {
            int machine = m;
            int starts = (int) switches.stream()
                    .filter(s -> s.machine() == machine && s.on())
                    .count();
            uses.add(new MachineUse("m" + m, starts, 0, 0, 0));
        }
        return new Summary(
                lowestC,
                "cold-corner",
                lowestS,
                belowS,
                gapS,
                4200,
                0,
                40_000,
                heaterKWh,
                dryerKWh,
                0,
                (heaterKWh + dryerKWh) * 0.3,
                "€",
                dryerKWh * 0.5,
                uses,
                (int) alerts.stream().filter(AlertEvent::raised).count(),
                1e-13,
                2e-14,
                List.of(),
                shortfall);
    }
}
