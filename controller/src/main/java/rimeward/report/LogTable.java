package rimeward.report;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import rimeward.strip.Markup;
import rimeward.strip.Stamp;

/** The log as a table of the page, with a heading for each day; what kind of line it is, the style sheet says. */
public final class LogTable {
    /** A law that switches without end would make a page that nobody can open. */
    private static final int MOST_ROWS = 1500;

    private LogTable() {}

    /** @param rest where the others stand, in words, should there be too many */
    public static void draw(ZoneOffset offset, List<LogEntry> entries, String rest, Markup to) {
        to.open("table", "class", "log").open("thead").open("tr");
        to.put("th", "time", "scope", "col").put("th", "what", "scope", "col").put("th", "why", "scope", "col");
        to.close().close();
        String day = "";
        for (LogEntry entry : entries.subList(0, Math.min(MOST_ROWS, entries.size()))) {
            String its = Stamp.date(entry.epochS(), offset);
            if (!its.equals(day)) {
                if (!day.isEmpty()) {
                    to.close();
                }
                to.line().open("tbody").open("tr");
                to.put("th", its, "colspan", "3", "scope", "rowgroup").close();
                day = its;
            }
            line(offset, entry, to);
        }
        if (!day.isEmpty()) {
            to.close();
        }
        to.close();
        if (entries.size() > MOST_ROWS) {
            to.put("p", "The first " + MOST_ROWS + " of " + entries.size() + " lines; " + rest);
        }
    }

    private static void line(ZoneOffset offset, LogEntry entry, Markup to) {
        String kind = entry.kind().name().toLowerCase(Locale.ROOT);
        to.line().open("tr", "class", kind);
        to.put("td", Stamp.second(entry.epochS(), offset));
        to.put("td", entry.what()).put("td", entry.why()).close();
    }
}
