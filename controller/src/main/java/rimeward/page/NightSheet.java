package rimeward.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import rimeward.core.guard.Holder;
import rimeward.record.FrameRow;
import rimeward.report.Say;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;
import rimeward.strip.ClockRow;
import rimeward.strip.DutyRow;
import rimeward.strip.Ground;
import rimeward.strip.LaneRow;
import rimeward.strip.Limit;
import rimeward.strip.Mark;
import rimeward.strip.MarkRow;
import rimeward.strip.Note;
import rimeward.strip.Pen;
import rimeward.strip.PenRow;
import rimeward.strip.Row;
import rimeward.strip.Scale;
import rimeward.strip.Span;
import rimeward.strip.Spell;
import rimeward.strip.Stamp;
import rimeward.strip.Strip;

/** A night of the record as a strip, drawn as the replay's: temperatures, machines, who held the warm duty, humidity. */
final class NightSheet {
    private static final int TEMPERATURE_PX = 280;
    private static final int HUMIDITY_PX = 110;
    /** Sunny noons may be cut off, so that the night is legible. */
    private static final double MOST_ABOVE_FLOOR_K = 12;

    private final Site site;
    private final Span span;
    private final double floorC;
    private final List<RowView> rows;

    NightSheet(Site site, Span span, double floorC, List<FrameRow> rows) {
        this.site = site;
        this.span = span;
        this.floorC = floorC;
        this.rows = rows.stream().map(row -> new RowView(site, row)).toList();
    }

    Strip strip(List<Mark> marks) {
        List<Row> strip = new ArrayList<>();
        strip.add(MarkRow.of(span, marks));
        strip.add(temperature());
        strip.add(new ClockRow());
        for (int i = 0; i < site.machines().size(); i++) {
            strip.add(lane(i));
        }
        strip.add(duty());
        strip.add(new ClockRow());
        strip.add(humidity());
        strip.add(new ClockRow());
        return new Strip(span, new Ground(List.of(), marks), strip);
    }

    private PenRow temperature() {
        RowSeries coldest = RowSeries.of(rows, RowView::coldestC);
        RowSeries outside = RowSeries.of(rows, RowView::outsideC);
        RowSeries dew = RowSeries.of(rows, RowView::dewPointC);
        double leastC = Math.min(floorC, Math.min(coldest.least(floorC), outside.least(floorC))) - 1;
        double mostC = Math.min(coldest.most(floorC) + 2, floorC + MOST_ABOVE_FLOOR_K);
        List<Pen> pens = List.of(
                new Pen("outside", "outside", outside, "°C", 1),
                new Pen("dew point", "dew", dew, "°C", 1),
                new Pen("coldest bench", "coldest", coldest, "°C", 1));
        int least = coldest.leastRow();
        List<Note> notes = least < 0
                ? List.of()
                : List.of(new Note(
                        coldest.epochS(least),
                        coldest.value(least),
                        Say.degrees(coldest.value(least)) + " at "
                                + Stamp.clock(coldest.epochS(least), span.offset())));
        Limit floor = new Limit("floor " + Say.number(floorC, 1), "floor", floorC, Limit.Side.BELOW, coldest);
        return new PenRow(
                "Temperature, °C",
                Scale.around(leastC, mostC, TEMPERATURE_PX),
                1,
                pens,
                List.of(floor),
                notes,
                "Coldest bench, less its sensor's uncertainty: lowest " + Say.degrees(coldest.least(floorC))
                        + "; outside: lowest " + Say.degrees(outside.least(floorC)) + "; floor "
                        + Say.degrees(floorC) + ".");
    }

    private PenRow humidity() {
        RowSeries rh = RowSeries.of(rows, RowView::rhPercent);
        double target = site.targets().rhPercent();
        double least = Math.min(rh.least(target), target) - 5;
        double most = Math.min(100, Math.max(rh.most(target), target) + 5);
        return new PenRow(
                "Relative humidity, %",
                Scale.around(least, most, HUMIDITY_PX),
                1,
                List.of(new Pen("humidity", "rh", rh, "%", 0)),
                List.of(new Limit("target " + Say.number(target, 0), "target", target, Limit.Side.ABOVE, rh)),
                List.of(),
                "Relative humidity where it is wettest: highest " + Say.number(rh.most(target), 0) + " %.");
    }

    private LaneRow lane(int at) {
        Machine machine = site.machines().get(at);
        RelaySet self = RelaySet.none().with(at);
        RowSeries powerW = RowSeries.of(rows, row -> OptionalDouble.of(row.powerW(self)));
        RowSeries asked =
                RowSeries.of(rows, row -> OptionalDouble.of(row.row().closed().has(at) ? 1 : 0));
        long closedS = totalS(spells(row -> row.closed().has(at)));
        return new LaneRow(
                machine.id(),
                ink(machine.role()),
                machine.ratedW(),
                powerW,
                asked,
                "Lane of " + machine.id() + ": its relay was closed for " + Say.duration(closedS) + ".");
    }

    private static String ink(Role role) {
        return switch (role) {
            case HEATER_STAGE -> "heater";
            case DRYER -> "dryer";
            case VENT_FAN -> "fan";
        };
    }

    private DutyRow duty() {
        List<Spell> heater = spells(row -> row.holder() == Holder.HEATER);
        List<Spell> dryer = spells(row -> row.holder() == Holder.DRYER);
        List<Spell> gaps = spells(row -> row.holder() == Holder.NOBODY);
        List<DutyRow.Line> lines =
                List.of(new DutyRow.Line("heater", "heater", heater), new DutyRow.Line("dryer", "dryer", dryer));
        return new DutyRow(
                "warm duty",
                lines,
                List.of(),
                gaps,
                "Who held the warm duty: heater " + Say.duration(totalS(heater)) + ", dryer "
                        + Say.duration(totalS(dryer)) + ", nobody though it was needed "
                        + Say.duration(totalS(gaps)) + ".");
    }

    /** While it held; a while without a controller ends it. */
    private List<Spell> spells(Predicate<FrameRow> holds) {
        List<Spell> spells = new ArrayList<>();
        Intervals whiles = new Intervals((row, fromMs, toMs) -> {
            long fromS = fromMs / 1000;
            long toS = toMs / 1000;
            if (holds.test(row)) {
                Spell before = spells.isEmpty() ? new Spell(fromS, fromS) : spells.get(spells.size() - 1);
                if (!spells.isEmpty() && before.toS() == fromS) {
                    spells.set(spells.size() - 1, new Spell(before.fromS(), toS));
                } else {
                    spells.add(new Spell(fromS, toS));
                }
            }
        });
        rows.forEach(row -> whiles.add(row.row()));
        return spells;
    }

    private static long totalS(List<Spell> spells) {
        return spells.stream().mapToLong(spell -> spell.toS() - spell.fromS()).sum();
    }
}
