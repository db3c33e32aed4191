package rimeward.sim.weather;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads recorded weather: tables with a header, described by a {@link ColumnMap} or by themselves, and EPW files. Values
 * that cannot be true are rejected and counted, gaps up to a stated length are bridged, and the {@link ImportReport}
 * accounts for every row and value; a longer gap, or anything that is not understood, is a fault of the file.
 */
public final class WeatherImporter {
    private final Path file;
    private final Span span;
    private final Faults faults;

    private WeatherImporter(Path file, Span span) {
        this.file = file;
        this.span = span;
        this.faults = new Faults(file);
    }

    /**
     * Reads a file that explains itself: an {@code .epw} file, or a table that tells its place in a comment and whose
     * columns are {@code time}, in ISO form (UTC unless it states an offset), and others named by quantity and unit, such as
     * {@code air °C}. See {@code config/weather/README.md}.
     */
    public static Imported read(Path file, Span span) throws WeatherFileException {
        var importer = new WeatherImporter(file, span);
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".epw")) {
            var epw = Epw.read(file, importer.faults);
            return importer.read(epw.lines(), Epw.map(epw.zone()), epw.place());
        }
        List<String> texts = CsvLine.readText(file, importer.faults);
        importer.faults.throwIfAny();
        return importer.readSelfDescribed(texts, Place.in(texts, importer.faults));
    }

    /** Reads a table whose columns are named by quantity and unit, but whose place is stated elsewhere. */
    public static Imported read(Path file, Place place, Span span) throws WeatherFileException {
        var importer = new WeatherImporter(file, span);
        return importer.readSelfDescribed(CsvLine.readText(file, importer.faults), place);
    }

    /** Reads a table as a column map tells. */
    public static Imported read(Path file, ColumnMap map, Place place, Span span) throws WeatherFileException {
        var importer = new WeatherImporter(file, span);
        return importer.read(CsvLine.readAll(file, map.separator, importer.faults), map, place);
    }

    private Imported readSelfDescribed(List<String> texts, Place place) throws WeatherFileException {
        List<CsvLine> lines = CsvLine.split(texts, ',');
        requireRows(lines);
        return read(lines, ofHeader(lines.get(0)), place);
    }

    private void requireRows(List<CsvLine> lines) throws WeatherFileException {
        faults.throwIfAny();
        if (lines.size() < 2) {
            faults.add("holds no rows; it needs a header and a row for each time");
        }
        faults.throwIfAny();
    }

    private ColumnMap ofHeader(CsvLine header) throws WeatherFileException {
        try {
            return ColumnMap.ofHeader(header.cells());
        } catch (IllegalArgumentException e) {
            faults.add(header.number(), "the header: " + e.getMessage());
            throw new WeatherFileException(faults.sentences());
        }
    }

    private Imported read(List<CsvLine> lines, ColumnMap map, Place place) throws WeatherFileException {
        requireRows(lines);
        var completeness = new Completeness(map, span, faults);
        var table = new Table(lines.get(0).cells(), map, span, faults);
        completeness.requireEnough();
        faults.throwIfAny();
        lines.subList(1, lines.size()).forEach(table::read);
        faults.throwIfAny();
        table.clean();
        table.columns.values().forEach(completeness::judge);
        faults.throwIfAny();
        var assembly = new Assembly(table.columns, place, map.assumed);
        var series = assembly.series(provenance(map), wanted(assembly.known()));
        faults.throwIfAny();
        return new Imported(series, report(table, assembly));
    }

    private Span wanted(Span known) throws WeatherFileException {
        if (!span.equals(Span.ALL)
                && (known.fromEpochS() > span.fromEpochS() || known.untilEpochS() < span.untilEpochS())) {
            faults.add("is complete from " + TimeColumns.utc(known.fromEpochS()) + " to "
                    + TimeColumns.utc(known.untilEpochS())
                    + ", but asked for from " + TimeColumns.utc(span.fromEpochS()) + " to "
                    + TimeColumns.utc(span.untilEpochS()) + "; ask for a time within");
        }
        faults.throwIfAny();
        return span.equals(Span.ALL) ? known : span;
    }

    private String provenance(ColumnMap map) {
        return map.daily()
                ? "recorded daily extremes of " + file.getFileName() + ", brought to hours by Parton & Logan (1981)"
                : "recorded: " + file.getFileName();
    }

    private ImportReport report(Table table, Assembly assembly) {
        var notes = new ArrayList<>(assembly.notes);
        if (!table.unused().isEmpty()) {
            notes.add("columns not used: " + String.join(", ", table.unused()));
        }
        long usualStepS = table.usualStepS();
        return new ImportReport(
                file.toString(),
                table.rows,
                table.rowsOfOthers,
                table.rowsOutside,
                table.rowsRepeated,
                table.columns.values().stream()
                        .map(column -> column.report(usualStepS))
                        .toList(),
                List.copyOf(notes));
    }
}
