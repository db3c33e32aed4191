package rimeward.sim.weather;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Collects a column map from texts as they stand in a settings file. Each method refuses what it cannot understand with an
 * {@link IllegalArgumentException} that says why; the caller adds file and line.
 */
public final class ColumnMapBuilder {
    private static final int HOUR_S = 3600;

    private String time = "time as iso";
    private ZoneId zone = ZoneOffset.UTC;
    final List<ColumnMap.Column> columns = new ArrayList<>();
    final List<ColumnMap.RowFilter> only = new ArrayList<>();
    final Set<String> missing = new TreeSet<>(Set.of("", "NA", "-9999"));
    final Map<Quantity, ColumnMap.Assumption> assumed = new EnumMap<>(Quantity.class);
    int longestGapS = 3 * HOUR_S;
    char separator = ',';

    ColumnMapBuilder() {}

    /** {@code "time_hour as iso"}, or columns and their pattern: {@code "year, month, day, hour as y M d H"}. */
    public ColumnMapBuilder time(String columnsAsFormat) {
        TimeColumns.parse(columnsAsFormat, zone);
        time = columnsAsFormat;
        return this;
    }

    /** The zone of times that state no offset: {@code UTC} (usual), {@code +01:00}, {@code Europe/London}. */
    public ColumnMapBuilder zone(String name) {
        zone = TimeColumns.parseZone(name);
        return this;
    }

    /**
     * A column: the quantity ({@code air}, {@code dew-point}, {@code humidity}, {@code wind}, {@code pressure},
     * {@code sea-level-pressure}, {@code cloud}, {@code radiation}, {@code lowest-air}, {@code highest-air}), then the
     * column's name and, last, its unit: {@code "temp °F"}.
     */
    public ColumnMapBuilder column(String quantity, String nameAndUnit) {
        int blank = nameAndUnit.trim().lastIndexOf(' ');
        if (blank < 1) {
            throw new IllegalArgumentException(
                    "\"" + nameAndUnit + "\" must be the column's name and its unit, as in \"temp °F\"");
        }
        String name = nameAndUnit.trim().substring(0, blank).trim();
        return put(Quantity.parse(quantity), name, nameAndUnit.trim().substring(blank + 1), 0, List.of());
    }

    ColumnMapBuilder put(Quantity quantity, String name, String unit, int shiftS, List<String> missing) {
        if (columns.stream().anyMatch(column -> column.quantity() == quantity)) {
            throw new IllegalArgumentException(quantity.key() + " has two columns; name one");
        }
        columns.add(new ColumnMap.Column(quantity, name, Unit.parse(unit, quantity.kind), shiftS, missing));
        return this;
    }

    /** Reads only rows with this value in this column: {@code "origin = EWR"}. May be said more than once. */
    public ColumnMapBuilder only(String columnEqualsValue) {
        int equals = columnEqualsValue.indexOf('=');
        if (equals < 1) {
            throw new IllegalArgumentException(
                    "\"" + columnEqualsValue + "\" must be column = value, as in \"origin = EWR\"");
        }
        only.add(new ColumnMap.RowFilter(
                columnEqualsValue.substring(0, equals).trim(),
                columnEqualsValue.substring(equals + 1).trim()));
        return this;
    }

    /** One more mark for "not measured", beside the empty cell, {@code NA} and {@code -9999}. */
    public ColumnMapBuilder missing(String mark) {
        missing.add(mark);
        return this;
    }

    /**
     * The wind or cloud to take for a file that has no such column: {@code assume("cloud", "0.4 fraction")}. The report says
     * so.
     */
    public ColumnMapBuilder assume(String quantity, String valueAndUnit) {
        var what = Quantity.parse(quantity);
        if (!what.canBeAssumed()) {
            throw new IllegalArgumentException(quantity + " cannot be assumed, only wind and cloud can");
        }
        if (!valueAndUnit.trim().matches("-?[0-9]+([.][0-9]+)? +[^ ]+")) {
            throw new IllegalArgumentException("\"" + valueAndUnit + "\" must be a number and a unit, as in \"2 m/s\"");
        }
        String[] parts = valueAndUnit.trim().split(" +");
        double value = Unit.parse(parts[1], what.kind).toOurs(Double.parseDouble(parts[0]));
        Limits.require(what.key(), value, what.lowest, what.highest);
        assumed.put(what, new ColumnMap.Assumption(value, valueAndUnit.trim()));
        return this;
    }

    /**
     * The longest time without a usable value that may be bridged by a straight line, seconds; 3 h unless said. Pressure may
     * be silent four times as long.
     */
    public ColumnMapBuilder longestGapS(int seconds) {
        longestGapS = (int) Limits.require("longest gap in seconds", seconds, 1, 31 * 24 * HOUR_S);
        return this;
    }

    /** The character between cells; a comma unless said. */
    public ColumnMapBuilder separator(char between) {
        separator = between;
        return this;
    }

    public ColumnMap build() {
        return new ColumnMap(this, TimeColumns.parse(time, zone));
    }
}
