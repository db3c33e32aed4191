package rimeward.adapter.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Tick;
import rimeward.record.FrameRow;
import rimeward.record.Lowest;
import rimeward.record.Night;
import rimeward.record.RowText;
import rimeward.record.Switched;

/** Values into rows. */
final class Rows {
    private Rows() {}

    static void frame(Connection connection, FrameRow row) throws SQLException {
        Frame frame = row.frame();
        insertAt(
                connection,
                frame.tick(),
                "frame",
                "change, outage_s, trust, holder, wish, closed, overruled, reasons,"
                        + " air_verdicts, rh_verdicts, deliveries, outlook, sensors, powers_w, tank_full, door_open",
                row.change() ? 1 : 0,
                Double.toString(row.outageS()),
                row.trust().name(),
                row.holder().name(),
                row.wish().bits(),
                row.closed().bits(),
                row.overruled().bits(),
                RowText.list(row.reasons(), RowText::reason),
                RowText.list(row.airVerdicts(), Enum::name),
                RowText.list(row.rhVerdicts(), Enum::name),
                RowText.list(row.deliveries(), Enum::name),
                RowText.outlook(row.outlook()),
                RowText.list(frame.senses().sensors(), RowText::sensor),
                RowText.list(frame.senses().powersW(), RowText::reading),
                frame.senses().tankFull().name(),
                frame.senses().doorOpen().name());
    }

    static void decision(Connection connection, Switched switched) throws SQLException {
        insertAt(
                connection,
                switched.at(),
                "decision",
                "machine, is_on, overruled, reason, sentence",
                switched.machine(),
                switched.on() ? 1 : 0,
                switched.overruled() ? 1 : 0,
                RowText.reason(switched.why()),
                switched.why().sentence());
    }

    /** @param sentMs when it arrived; null while it is to be sent */
    static void alert(Connection connection, long number, Alert alert, @Nullable Long sentMs) throws SQLException {
        insertAt(
                connection,
                alert.at(),
                "outbox",
                "id, incident, kind, subject, change, text, sent_ms",
                number,
                alert.id(),
                alert.kind().name(),
                alert.subject(),
                alert.change().name(),
                alert.text(),
                sentMs);
    }

    static void night(Connection connection, Night night) throws SQLException {
        insert(
                connection,
                "night (evening, bench_c, outside_c, seen_s, wet_s, machines, cost, litres, alerts)",
                night.evening().toString(),
                celsius(night.bench()),
                celsius(night.outside()),
                night.seenS(),
                night.wetS(),
                RowText.list(night.machines(), Night.Use::toText),
                night.cost(),
                night.litresEstimated(),
                night.alerts());
    }

    static void state(Connection connection, String text) throws SQLException {
        insert(connection, "state (id, text)", 1, text);
    }

    static void note(Connection connection, Note note) throws SQLException {
        insert(connection, note.place().columns(), note.name(), note.text());
    }

    private static @Nullable Double celsius(Lowest lowest) {
        return lowest instanceof Lowest.Seen seen ? seen.airC() : null;
    }

    /** A row that begins with its tick. */
    private static void insertAt(
            Connection connection, Tick tick, String table, String columns, @Nullable Object... cells)
            throws SQLException {
        List<@Nullable Object> all = new ArrayList<>(
                List.of(tick.wall().epochMs(), tick.wall().trusted() ? 1 : 0, tick.number(), tick.elapsedMs()));
        all.addAll(Arrays.asList(cells));
        insert(connection, table + " (at_ms, trusted, number, elapsed_ms, " + columns + ")", all.toArray());
    }

    static void insert(Connection connection, String into, @Nullable Object... cells) throws SQLException {
        String marks = String.join(", ", Collections.nCopies(cells.length, "?"));
        try (PreparedStatement statement =
                connection.prepareStatement("INSERT OR REPLACE INTO " + into + " VALUES (" + marks + ")")) {
            for (int i = 0; i < cells.length; i++) {
                statement.setObject(i + 1, cells[i]);
            }
            statement.executeUpdate();
        }
    }
}
