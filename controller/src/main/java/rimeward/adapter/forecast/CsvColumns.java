package rimeward.adapter.forecast;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rimeward.core.outlook.Forecast;
import rimeward.json.Excerpt;

/** Which column holds what, and in which unit. With semicolons between the cells, as some spreadsheets have it, decimals may have a comma. */
final class CsvColumns {
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{1,12})?");
    private static final List<String> ABSENT = List.of("", "NA", "-9999");

    private record Column(int at, Quantity.Unit unit) {}

    private final char separator;
    private final int count;
    private final int timeAt;
    private final Map<Quantity, Column> columns;

    private CsvColumns(char separator, int count, int timeAt, Map<Quantity, Column> columns) {
        this.separator = separator;
        this.count = count;
        this.timeAt = timeAt;
        this.columns = columns;
    }

    static CsvColumns of(String where, String header) throws Unreadable {
        char separator = header.indexOf(';') >= 0 ? ';' : ',';
        List<String> names = cells(header, separator);
        Map<Quantity, Column> columns = new EnumMap<>(Quantity.class);
        for (int i = 0; i < names.size(); i++) {
            String[] parts = names.get(i).split(" +", 2);
            for (Quantity quantity : Quantity.values()) {
                if (quantity.word().equals(parts[0])
                        && columns.put(quantity, new Column(i, unit(where, quantity, parts))) != null) {
                    throw new Unreadable(where + ": the header has " + quantity.word() + " twice");
                }
            }
        }
        int timeAt = names.indexOf("time");
        if (timeAt < 0 || !columns.containsKey(Quantity.AIR)) {
            throw new Unreadable(where + ": the header must name time and air with its unit, such as \"time,air °C\"");
        }
        return new CsvColumns(separator, names.size(), timeAt, columns);
    }

    private static Quantity.Unit unit(String where, Quantity quantity, String[] parts) throws Unreadable {
        Optional<Quantity.Unit> unit = quantity.unit(parts.length < 2 ? "" : parts[1].strip());
        return unit.orElseThrow(() -> new Unreadable(
                where + ": the column " + quantity.word() + " needs its unit, one of " + quantity.units()));
    }

    Forecast.Point point(String where, String line) throws Unreadable {
        List<String> cells = cells(line, separator);
        if (cells.size() != count) {
            throw new Unreadable(where + ": it has " + cells.size() + " cells, and the header " + count);
        }
        long epochS = Members.time(where + ": time", cells.get(timeAt));
        OptionalDouble airC = value(where, cells, Quantity.AIR);
        OptionalDouble dewPointC = value(where, cells, Quantity.DEW_POINT);
        OptionalDouble rhPercent = value(where, cells, Quantity.HUMIDITY);
        if (airC.isEmpty()) {
            throw new Unreadable(where + ": air is missing");
        }
        if (dewPointC.isEmpty() && rhPercent.isPresent()) {
            dewPointC = OptionalDouble.of(ServiceText.dewPointC(where, airC.getAsDouble(), rhPercent.getAsDouble()));
        }
        return Plausible.point(
                where,
                epochS,
                airC.getAsDouble(),
                dewPointC,
                value(where, cells, Quantity.WIND),
                value(where, cells, Quantity.CLOUD));
    }

    private OptionalDouble value(String where, List<String> cells, Quantity quantity) throws Unreadable {
        Column column = columns.get(quantity);
        if (column == null || ABSENT.contains(cells.get(column.at()))) {
            return OptionalDouble.empty();
        }
        String cell = cells.get(column.at());
        String digits = separator == ';' ? cell.replace(',', '.') : cell;
        if (!NUMBER.matcher(digits).matches()) {
            throw new Unreadable(String.format(
                    Locale.ROOT, "%s: %s is %s, which is no number", where, quantity.word(), Excerpt.of(cell)));
        }
        return OptionalDouble.of(Double.parseDouble(digits) * column.unit().factor()
                + column.unit().offset());
    }

    private static List<String> cells(String line, char separator) {
        return Arrays.stream(line.split(Character.toString(separator), -1))
                .map(String::strip)
                .toList();
    }
}
