package rimeward.sim.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What became of a weather file: every row and every value is accounted for.
 *
 * @param file its path as given
 * @param rows rows below the header
 * @param rowsOfOthers rows that the row filter left out
 * @param rowsOutside rows outside the time that was asked for (and a little around it)
 * @param rowsRepeated rows whose time had already been told; the first one counts
 * @param columns column by column
 * @param notes what was assumed, derived, or not used, one sentence each
 */
public record ImportReport(
        String file,
        int rows,
        int rowsOfOthers,
        int rowsOutside,
        int rowsRepeated,
        List<ColumnReport> columns,
        List<String> notes) {

    /** The report as lines of text for people. */
    public List<String> lines() {
        var lines = new ArrayList<String>();
        lines.add(file + ": " + rows + " rows, " + rowsOfOthers + " left out by the row filter, " + rowsOutside
                + " outside the time asked for, " + rowsRepeated + " repeat a time");
        for (ColumnReport c : columns) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  %s: %d used, %d missing, %d rejected, %d bridged (longest gap %.1f h)",
                    c.column(),
                    c.used(),
                    c.missing(),
                    c.rejected(),
                    c.bridged(),
                    c.longestGapS() / 3600.0));
            c.firstRejections().forEach(rejection -> lines.add("    rejected " + rejection));
        }
        notes.forEach(note -> lines.add("  " + note));
        return lines;
    }
}
