package rimeward.sim.weather;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Walks the rows of a weather table and hands each cell to its column's reader. Not for sharing. */
final class Table {
    private static final int DAY_S = 86_400;

    private final List<String> header;
    private final ColumnMap map;
    private final Span span;
    private final Faults faults;
    private final List<Integer> timeIndices = new ArrayList<>();
    private final List<Integer> filterIndices = new ArrayList<>();
    final Map<Quantity, ColumnReader> columns = new EnumMap<>(Quantity.class);
    private final List<Long> timesEpochS = new ArrayList<>();
    private long previousEpochS = Long.MIN_VALUE;
    int rows;
    int rowsOfOthers;
    int rowsOutside;
    int rowsRepeated;

    Table(List<String> header, ColumnMap map, Span span, Faults faults) {
        this.header = header;
        this.map = map;
        this.span = span.widened(Math.max(map.longestGapS, map.daily() ? 2 * DAY_S : 0));
        this.faults = faults;
        map.time.names().forEach(name -> timeIndices.add(indexOf(name)));
        map.only.forEach(filter -> filterIndices.add(indexOf(filter.column())));
        for (ColumnMap.Column column : map.columns) {
            columns.put(column.quantity(), new ColumnReader(column, indexOf(column.name()), map.missing));
        }
    }

    private int indexOf(String name) {
        int index = header.indexOf(name);
        if (index < 0) {
            faults.add("has no column \"" + name + "\"; its columns are " + String.join(", ", header));
        }
        return index;
    }

    /** The header's columns that nothing asks for. */
    List<String> unused() {
        return header.stream()
                .filter(name -> !map.time.names().contains(name)
                        && map.columns.stream()
                                .noneMatch(column -> column.name().equals(name))
                        && map.only.stream().noneMatch(filter -> filter.column().equals(name)))
                .toList();
    }

    /** Seconds between rows, as most rows have it. */
    long usualStepS() {
        var steps = new ArrayList<Long>();
        for (int i = 1; i < timesEpochS.size(); i++) {
            steps.add(timesEpochS.get(i) - timesEpochS.get(i - 1));
        }
        steps.sort(null);
        return steps.isEmpty() ? DAY_S : steps.get(steps.size() / 2);
    }

    void read(CsvLine line) {
        rows++;
        if (line.cells().size() != header.size()) {
            faults.add(
                    line.number(),
                    "the row has " + line.cells().size() + " cells, the header " + header.size()
                            + "; mend or remove the row");
        } else if (isOfOthers(line)) {
            rowsOfOthers++;
        } else {
            readAt(line);
        }
    }

    private boolean isOfOthers(CsvLine line) {
        for (int i = 0; i < filterIndices.size(); i++) {
            if (!line.cells().get(filterIndices.get(i)).equals(map.only.get(i).value())) {
                return true;
            }
        }
        return false;
    }

    private void readAt(CsvLine line) {
        String text = timeIndices.stream().map(line.cells()::get).collect(Collectors.joining(" "));
        try {
            accept(line, map.time.epochS(text, previousEpochS), text);
        } catch (DateTimeException e) {
            faults.add(
                    line.number(),
                    "time \"" + text + "\" is not understood (" + e.getMessage()
                            + "); mend it, or say its format and zone");
        }
    }

    private void accept(CsvLine line, long epochS, String text) {
        if (epochS == previousEpochS) {
            rowsRepeated++;
        } else if (epochS < previousEpochS) {
            faults.add(
                    line.number(),
                    "time \"" + text + "\" is before that of the row above; sort the file by time, and if it"
                            + " holds several stations say which one is meant (only)");
        } else {
            previousEpochS = epochS;
            readWithin(line, epochS);
        }
    }

    private void readWithin(CsvLine line, long epochS) {
        if (!span.holds(epochS)) {
            rowsOutside++;
            return;
        }
        timesEpochS.add(epochS);
        long valuesEpochS = map.daily() ? epochS + DAY_S / 2 : epochS; // a day's values count for its middle
        columns.values().forEach(column -> column.read(line, valuesEpochS, faults));
    }

    /** Takes out what cannot be: single spikes, then a dew point above the air, or a lowest above the highest. */
    void clean() {
        columns.values().forEach(ColumnReader::rejectSpikes);
        var highest = columns.get(map.daily() ? Quantity.HIGHEST_AIR : Quantity.AIR);
        for (Quantity lower : List.of(Quantity.DEW_POINT, Quantity.LOWEST_AIR)) {
            var low = columns.get(lower);
            if (highest != null && low != null) {
                low.rejectAbove(highest);
            }
        }
    }
}
