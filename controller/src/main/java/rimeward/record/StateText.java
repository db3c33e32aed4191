package rimeward.record;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.zip.CRC32;
import rimeward.alert.AlertKind;
import rimeward.alert.AlertSlot;
import rimeward.core.Pulse;
import rimeward.core.guard.GuardState;
import rimeward.core.guard.MachineClock;
import rimeward.core.guard.StandDowns;
import rimeward.core.judgement.BenchHabit;
import rimeward.core.order.FloorOrder;
import rimeward.core.order.HandedForecast;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Standing;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Failures;
import rimeward.site.RelaySet;

/** The saved state as text: a line for each thing, the first with the version, the last with a checksum of all before it. */
final class StateText {
    private static final String VERSION = "rimeward-state 2";

    /** Without failures and habits, as if there had been none. */
    private static final String OLD_VERSION = "rimeward-state 1";

    private static final String SUM = "sum ";

    private StateText() {}

    static String write(SavedState state) {
        GuardState guard = state.guard();
        StringBuilder text = new StringBuilder(VERSION).append('\n');
        line(text, "boot", state.boot());
        line(text, "wall", state.wall().epochMs(), state.wall().trusted());
        line(text, "pulse", state.pulse().elapsedMs(), state.pulse().usualS());
        for (int i = 0; i < state.machines().size(); i++) {
            MachineClock clock = guard.clocks().get(i);
            line(
                    text,
                    "machine",
                    state.machines().get(i),
                    guard.closed().has(i),
                    clock.sinceSwitchS(),
                    clock.sinceStartS());
        }
        line(
                text,
                "guard",
                guard.needed(),
                guard.hot(),
                guard.dryerTooCold(),
                guard.dryerRestLeftS(),
                guard.sinceAnyStartS(),
                guard.blindPhaseS());
        standDowns(text, guard.standDowns(), state.machines());
        failures(text, state.failures(), state.machines());
        for (BenchHabit habit : state.habits()) {
            line(text, "habit", habit.sensor(), habit.usualK());
        }
        line(text, "law", state.law(), state.lawMemory());
        line(text, "outside", state.assumedOutsideC());
        line(text, "outage", state.lastOutageS());
        standing(text, state.standing());
        for (AlertSlot slot : state.alerts()) {
            line(
                    text,
                    "alert",
                    slot.kind(),
                    slot.subject(),
                    slot.raised(),
                    slot.lastedS(),
                    slot.number(),
                    slot.acknowledged(),
                    slot.untoldS(),
                    slot.sumS());
        }
        return text + SUM + sum(text.toString()) + "\n";
    }

    private static void standDowns(StringBuilder text, StandDowns standDowns, List<String> machines) {
        for (int i = 0; i < machines.size(); i++) {
            if (standDowns.machines().has(i)) {
                line(text, "stands-down", machines.get(i), standDowns.leftS(i));
            }
        }
    }

    private static void standing(StringBuilder text, Standing standing) {
        if (standing.floor() instanceof FloorOrder.Asked asked) {
            line(text, "floor", asked.floorC(), asked.settings());
        }
        if (standing.forecast() instanceof HandedForecast.Night handed) {
            Outlook.Night night = handed.night();
            line(
                    text,
                    "forecast",
                    night.night(),
                    night.lowestOutsideC(),
                    night.spreadK(),
                    night.endsInS(),
                    handed.takenMs());
        }
        if (standing.tunnel() instanceof KnownTunnel.Learned tunnel) {
            line(
                    text,
                    "tunnel",
                    tunnel.heatLossWPerK(),
                    tunnel.airCapacityJPerK(),
                    tunnel.massCapacityJPerK(),
                    tunnel.massCouplingWPerK(),
                    tunnel.nights(),
                    tunnel.settings());
        }
    }

    private static void failures(StringBuilder text, Failures failures, List<String> machines) {
        for (int i = 0; i < machines.size(); i++) {
            if (failures.failed().has(i)) {
                line(text, "failed", machines.get(i), failures.sinceS().get(i));
            }
        }
        if (failures.dryerNotDrying()) {
            line(text, "not-drying", failures.dryerUnaskedS());
        }
    }

    private static void line(StringBuilder text, String key, Object... values) {
        text.append(key);
        for (Object value : values) {
            text.append(' ').append(value);
        }
        text.append('\n');
    }

    static SavedState read(String text) {
        int end = text.lastIndexOf(SUM);
        if (end <= 0 || text.charAt(end - 1) != '\n') {
            throw new DamagedState("its end is missing");
        }
        String body = text.substring(0, end);
        if (!text.substring(end + SUM.length()).equals(sum(body) + "\n")) {
            throw new DamagedState("its checksum does not fit");
        }
        if (!body.startsWith(VERSION + "\n") && !body.startsWith(OLD_VERSION + "\n")) {
            throw new DamagedState("its version is not \"" + VERSION + "\"");
        }
        try {
            return new Reader(body.split("\n")).read();
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            throw new DamagedState("a line cannot be read (" + e.getMessage() + ")");
        }
    }

    private static String sum(String body) {
        CRC32 crc = new CRC32();
        crc.update(body.getBytes(UTF_8));
        return Long.toHexString(crc.getValue());
    }

    /** Takes the lines in the order in which they were written. */
    private static final class Reader {
        private final String[] lines;
        private int next = 1;

        Reader(String[] lines) {
            this.lines = lines;
        }

        SavedState read() {
            String boot = rest("boot");
            String[] wall = parts("wall");
            String[] pulse = parts("pulse");
            List<String> machines = new ArrayList<>();
            List<MachineClock> clocks = new ArrayList<>();
            RelaySet closed = RelaySet.none();
            while (at("machine")) {
                String[] machine = parts("machine");
                closed = flag(machine[1]) ? closed.with(machines.size()) : closed;
                machines.add(machine[0]);
                clocks.add(new MachineClock(number(machine[2]), number(machine[3])));
            }
            String[] guard = parts("guard");
            StandDowns standDowns = standDowns(machines);
            Failures failures = failures(machines);
            List<BenchHabit> habits = habits();
            String[] law = rest("law").split(" ", 2);
            double outsideC = number(rest("outside"));
            double outageS = number(rest("outage"));
            Standing standing = new Standing(floor(), forecast(), tunnel());
            return new SavedState(
                    boot,
                    new WallTime(Long.parseLong(wall[0]), flag(wall[1])),
                    new Pulse(Long.parseLong(pulse[0]), number(pulse[1])),
                    machines,
                    new GuardState(
                            closed,
                            clocks,
                            flag(guard[0]),
                            flag(guard[1]),
                            flag(guard[2]),
                            number(guard[3]),
                            number(guard[4]),
                            number(guard[5]),
                            standDowns),
                    failures,
                    habits,
                    law[0],
                    law[1],
                    outsideC,
                    outageS,
                    alerts(),
                    standing);
        }

        private StandDowns standDowns(List<String> machines) {
            StandDowns found = StandDowns.NONE;
            while (at("stands-down")) {
                String[] machine = parts("stands-down");
                found = found.with(machines.indexOf(machine[0]), number(machine[1]), machines.size());
            }
            return found;
        }

        private FloorOrder floor() {
            if (!at("floor")) {
                return FloorOrder.AS_IN_SETTINGS;
            }
            String[] floor = parts("floor");
            return new FloorOrder.Asked(number(floor[0]), Long.parseLong(floor[1]));
        }

        private HandedForecast forecast() {
            if (!at("forecast")) {
                return HandedForecast.NONE;
            }
            String[] part = parts("forecast");
            Outlook.Night night =
                    new Outlook.Night(Long.parseLong(part[0]), number(part[1]), number(part[2]), number(part[3]));
            return new HandedForecast.Night(night, Long.parseLong(part[4]));
        }

        private KnownTunnel tunnel() {
            if (!at("tunnel")) {
                return KnownTunnel.AS_IN_SETTINGS;
            }
            String[] part = parts("tunnel");
            return new KnownTunnel.Learned(
                    number(part[0]),
                    number(part[1]),
                    number(part[2]),
                    number(part[3]),
                    Integer.parseInt(part[4]),
                    Long.parseLong(part[5]));
        }

        private Failures failures(List<String> machines) {
            RelaySet failed = RelaySet.none();
            List<Double> sinceS = new ArrayList<>(Collections.nCopies(machines.size(), 0.0));
            while (at("failed")) {
                String[] machine = parts("failed");
                int place = machines.indexOf(machine[0]);
                failed = failed.with(place);
                sinceS.set(place, number(machine[1]));
            }
            return at("not-drying")
                    ? new Failures(failed, sinceS, true, number(rest("not-drying")))
                    : new Failures(failed, sinceS, false, 0);
        }

        private List<BenchHabit> habits() {
            List<BenchHabit> habits = new ArrayList<>();
            while (at("habit")) {
                String[] habit = parts("habit");
                habits.add(new BenchHabit(habit[0], number(habit[1])));
            }
            return habits;
        }

        private List<AlertSlot> alerts() {
            List<AlertSlot> alerts = new ArrayList<>();
            while (at("alert")) {
                String[] slot = parts("alert");
                boolean old = slot.length == 4; // alerts had no number then, and were not told again
                alerts.add(new AlertSlot(
                        AlertKind.valueOf(slot[0]),
                        slot[1],
                        flag(slot[2]),
                        number(slot[3]),
                        old ? 0 : Long.parseLong(slot[4]),
                        !old && flag(slot[5]),
                        old ? 0 : number(slot[6]),
                        old ? 0 : number(slot[7])));
            }
            if (next != lines.length) {
                throw new IllegalArgumentException("\"" + lines[next] + "\"");
            }
            return alerts;
        }

        private boolean at(String key) {
            return next < lines.length && lines[next].startsWith(key + " ");
        }

        private String rest(String key) {
            if (!at(key)) {
                throw new IllegalArgumentException("no \"" + key + "\"");
            }
            return lines[next++].substring(key.length() + 1);
        }

        private String[] parts(String key) {
            return rest(key).split(" ", -1);
        }

        private static boolean flag(String word) {
            return switch (word) {
                case "true" -> true;
                case "false" -> false;
                default -> throw new IllegalArgumentException("\"" + word + "\"");
            };
        }

        private static double number(String word) {
            double number = Double.parseDouble(word);
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("\"" + word + "\"");
            }
            return number;
        }
    }
}
