package rimeward.sim.weather;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Gathers the values of one column, and what was wrong with the others. Not for sharing. */
final class ColumnReader {
    private static final int TOLD = 5;
    private static final int NEIGHBOUR_S = 2 * 3600;

    /** A usable value and the line it stood on. */
    record Reading(long epochS, double value, int line) {}

    final ColumnMap.Column column;
    private final int index;
    private final MissingMarks marks;
    private final List<Reading> readings = new ArrayList<>();
    private final List<String> firstRejections = new ArrayList<>();
    private int missing;
    private int rejected;

    ColumnReader(ColumnMap.Column column, int index, Set<String> missing) {
        this.column = column;
        this.index = index;
        this.marks = MissingMarks.of(missing, column.missing());
    }

    /** Takes this column's cell of a line. */
    void read(CsvLine line, long epochS, Faults faults) {
        String cell = line.cells().get(index);
        if (marks.hold(cell)) {
            missing++;
            return;
        }
        if (!MissingMarks.isNumber(cell)) {
            faults.add(
                    line.number(),
                    "column " + column.name() + ": \"" + cell
                            + "\" is not a number; correct it, or name it as a missing mark");
            return;
        }
        double value = column.unit().toOurs(Double.parseDouble(cell));
        Quantity quantity = column.quantity();
        if (value >= quantity.lowest && value <= quantity.highest) {
            readings.add(new Reading(epochS + column.shiftS(), value, line.number()));
        } else {
            reject(line.number(), value, "outside " + told(quantity.lowest) + "…" + told(quantity.highest));
        }
    }

    /** Takes out values above those of another column on the same line. */
    void rejectAbove(ColumnReader other) {
        Map<Integer, Double> highest = new HashMap<>();
        other.readings.forEach(reading -> highest.put(reading.line(), reading.value()));
        var kept = new ArrayList<Reading>();
        for (Reading here : readings) {
            Double limit = highest.get(here.line());
            if (limit == null || here.value() <= limit) {
                kept.add(here);
            } else {
                reject(
                        here.line(),
                        here.value(),
                        "above " + other.column.quantity().key() + " of the same row");
            }
        }
        keep(kept);
    }

    /** Takes out single values that leave both their neighbours on the same side. */
    void rejectSpikes() {
        var kept = new ArrayList<Reading>();
        for (int i = 0; i < readings.size(); i++) {
            Reading here = readings.get(i);
            if (i > 0 && i + 1 < readings.size() && isSpike(readings.get(i - 1), here, readings.get(i + 1))) {
                reject(
                        here.line(),
                        here.value(),
                        "a spike: before and after it "
                                + told(readings.get(i - 1).value()) + " and "
                                + told(readings.get(i + 1).value()));
            } else {
                kept.add(here);
            }
        }
        keep(kept);
    }

    private void keep(List<Reading> kept) {
        readings.clear();
        readings.addAll(kept);
    }

    private boolean isSpike(Reading before, Reading here, Reading after) {
        if (here.epochS() - before.epochS() > NEIGHBOUR_S || after.epochS() - here.epochS() > NEIGHBOUR_S) {
            return false;
        }
        double up = here.value() - before.value();
        double down = here.value() - after.value();
        return up * down > 0 && Math.min(Math.abs(up), Math.abs(down)) > column.quantity().spike;
    }

    private void reject(int line, double value, String why) {
        rejected++;
        if (firstRejections.size() < TOLD) {
            firstRejections.add("line " + line + ": " + told(value) + ", " + why);
        }
    }

    /** A value of ours in the words of the file. */
    private String told(double ours) {
        return String.format(
                Locale.ROOT,
                "%.4g %s",
                column.unit().fromOurs(ours),
                column.unit().spelling());
    }

    /** The first rejection with its line and reason; there must be one. */
    String firstRejection() {
        return firstRejections.get(0);
    }

    int rejected() {
        return rejected;
    }

    List<Reading> readings() {
        return readings;
    }

    Track track() {
        var track = new Track();
        readings.forEach(reading -> track.add(reading.epochS(), reading.value()));
        return track;
    }

    /** What became of the column, given the usual time between rows. */
    ColumnReport report(long usualStepS) {
        long longestGapS = 0;
        int bridged = 0;
        for (int i = 1; i < readings.size(); i++) {
            long gapS = readings.get(i).epochS() - readings.get(i - 1).epochS();
            longestGapS = Math.max(longestGapS, gapS);
            bridged += (int) Math.max(0, StrictMath.round((double) gapS / usualStepS) - 1);
        }
        String title = column.quantity().key() + " (" + column.name() + ", "
                + column.unit().spelling() + ")";
        return new ColumnReport(
                title, readings.size(), missing, rejected, List.copyOf(firstRejections), bridged, longestGapS);
    }
}
