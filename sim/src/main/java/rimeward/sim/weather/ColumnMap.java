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
 * How to read one weather service's table: which column is what, in which unit, and what to do about what it lacks. Immutable; made by a
 * {@link #builder()}.
 */
public final class ColumnMap {
    private static final int HOUR_S = 3600;

    /** A column as the file names it; its values belong to a time so many seconds after the row's. */
    record Column(Quantity quantity, String name, Unit unit, int shiftS, List<String> missing) {}

    /** A value for a whole file without such a column, and how it was written. */
    record Assumption(double value, String told) {}

    /** Only rows whose cell in this column has this value. */
    record RowFilter(String column, String value) {}

    final TimeColumns time;
    final List<Column> columns;
    final List<RowFilter> only;
    final Set<String> missing;
    final Map<Quantity, Assumption> assumed;
    final int longestGapS;
    final char separator;

    private ColumnMap(Builder from, TimeColumns time) {
        this.time = time;
        columns = List.copyOf(from.columns);
        only = List.copyOf(from.only);
        missing = Set.copyOf(from.missing);
        assumed = new EnumMap<>(from.assumed);
        longestGapS = from.longestGapS;
        separator = from.separator;
    }

    boolean has(Quantity quantity) {
        return columns.stream().anyMatch(column -> column.quantity == quantity);
    }

    /** Whether the file tells each day's extremes rather than a temperature at a time. */
    boolean daily() {
        return has(Quantity.LOWEST_AIR) || has(Quantity.HIGHEST_AIR);
    }

    public static Builder builder() {
        return new Builder();
    }

    /**
     * The map of a table that explains itself: a column {@code time} in ISO form, and columns named by quantity and unit, such as {@code air °C},
     * {@code dew-point °F}, {@code wind knots}, {@code cloud oktas}.
     */
    static ColumnMap ofHeader(List<String> header) {
        var builder = builder().time("time as iso");
        for (String cell : header) {
            int blank = cell.indexOf(' ');
            if (blank > 0 && Quantity.isKey(cell.substring(0, blank))) {
                builder.put(
                        Quantity.parse(cell.substring(0, blank)),
                        cell,
                        cell.substring(cell.lastIndexOf(' ') + 1),
                        0,
                        List.of());
            }
        }
        return builder.build();
    }

    /**
     * Collects a column map from texts as they stand in a settings file. Each method refuses what it cannot understand with an
     * {@link IllegalArgumentException} that says why; the caller adds file and line.
     */
    public static final class Builder {
        private String time = "time as iso";
        private ZoneId zone = ZoneOffset.UTC;
        private final List<Column> columns = new ArrayList<>();
        private final List<RowFilter> only = new ArrayList<>();
        private final Set<String> missing = new TreeSet<>(Set.of("", "NA", "-9999"));
        private final Map<Quantity, Assumption> assumed = new EnumMap<>(Quantity.class);
        private int longestGapS = 3 * HOUR_S;
        private char separator = ',';

        private Builder() {}

        /** {@code "time_hour as iso"}, or columns and their pattern: {@code "year, month, day, hour as y M d H"}. */
        public Builder time(String columnsAsFormat) {
            TimeColumns.parse(columnsAsFormat, zone);
            time = columnsAsFormat;
            return this;
        }

        /** The zone of times that state no offset: {@code UTC} (usual), {@code +01:00}, {@code Europe/London}. */
        public Builder zone(String name) {
            zone = TimeColumns.parseZone(name);
            return this;
        }

        /**
         * A column: the quantity ({@code air}, {@code dew-point}, {@code humidity}, {@code wind}, {@code pressure}, {@code sea-level-pressure},
         * {@code cloud}, {@code radiation}, {@code lowest-air}, {@code highest-air}), then the column's name and, last, its unit: {@code "temp °F"}.
         */
        public Builder column(String quantity, String nameAndUnit) {
            int blank = nameAndUnit.trim().lastIndexOf(' ');
            if (blank < 1) {
                throw new IllegalArgumentException(
                        "\"" + nameAndUnit + "\" must be the column's name and its unit, as in \"temp °F\"");
            }
            String name = nameAndUnit.trim().substring(0, blank).trim();
            return put(Quantity.parse(quantity), name, nameAndUnit.trim().substring(blank + 1), 0, List.of());
        }

        Builder put(Quantity quantity, String name, String unit, int shiftS, List<String> missing) {
            if (columns.stream().anyMatch(column -> column.quantity == quantity)) {
                throw new IllegalArgumentException(quantity.key() + " has two columns; name one");
            }
            columns.add(new Column(quantity, name, Unit.parse(unit, quantity.kind), shiftS, missing));
            return this;
        }

        /** Reads only rows with this value in this column: {@code "origin = EWR"}. May be said more than once. */
        public Builder only(String columnEqualsValue) {
            int equals = columnEqualsValue.indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException(
                        "\"" + columnEqualsValue + "\" must be column = value, as in \"origin = EWR\"");
            }
            only.add(new RowFilter(
                    columnEqualsValue.substring(0, equals).trim(),
                    columnEqualsValue.substring(equals + 1).trim()));
            return this;
        }

        /** One more mark for "not measured", beside the empty cell, {@code NA} and {@code -9999}. */
        public Builder missing(String mark) {
            missing.add(mark);
            return this;
        }

        /**
         * The wind or cloud to take for a file that has no such column: {@code assume("cloud", "0.4 fraction")}. The report says so.
         */
        public Builder assume(String quantity, String valueAndUnit) {
            var what = Quantity.parse(quantity);
            if (!what.canBeAssumed()) {
                throw new IllegalArgumentException(quantity + " cannot be assumed, only wind and cloud can");
            }
            if (!valueAndUnit.trim().matches("-?[0-9]+([.][0-9]+)? +[^ ]+")) {
                throw new IllegalArgumentException(
                        "\"" + valueAndUnit + "\" must be a number and a unit, as in \"2 m/s\"");
            }
            String[] parts = valueAndUnit.trim().split(" +");
            double value = Unit.parse(parts[1], what.kind).toOurs(Double.parseDouble(parts[0]));
            Limits.require(what.key(), value, what.lowest, what.highest);
            assumed.put(what, new Assumption(value, valueAndUnit.trim()));
            return this;
        }

        /** The longest time without a usable value that may be bridged by a straight line, seconds; 3 h unless said. Pressure may be silent four times as long. */
        public Builder longestGapS(int seconds) {
            longestGapS = (int) Limits.require("longest gap in seconds", seconds, 1, 31 * 24 * HOUR_S);
            return this;
        }

        /** The character between cells; a comma unless said. */
        public Builder separator(char between) {
            separator = between;
            return this;
        }

        public ColumnMap build() {
            return new ColumnMap(this, TimeColumns.parse(time, zone));
        }
    }
}
