package rimeward.sim.weather;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How to read one weather service's table: which column is what, in which unit, and what to do about what it lacks.
 * Immutable; made by a {@link #builder()}.
 */
public final class ColumnMap {
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

    ColumnMap(ColumnMapBuilder from, TimeColumns time) {
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

    public static ColumnMapBuilder builder() {
        return new ColumnMapBuilder();
    }

    /**
     * The map of a table that explains itself: a column {@code time} in ISO form, and columns named by quantity and unit,
     * such as {@code air °C}, {@code dew-point °F}, {@code wind knots}, {@code cloud oktas}.
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
}
