package rimeward.adapter.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.port.Outbox;

/**
 * Alerts between their raising and their arrival, as the writer's thread has them: what the disk has not taken yet, and which of those on
 * the disk have arrived. Each has its number from the beginning, so that one that arrives before the disk takes it is not sent twice.
 */
final class Outgoing {
    private final boolean sends;
    private final List<Outbox.Entry> unwritten = new ArrayList<>();
    private final Map<Long, Lanes.Mark> marks = new HashMap<>();
    private long next;
    private long highest;

    /**
     * Nothing yet.
     *
     * @param sends whether somebody sends alerts on; if not, none waits for it
     * @param firstNumber of a file that has none, or cannot be opened: the time of day in ms, so that no number comes again when a file is lost
     */
    Outgoing(boolean sends, long firstNumber) {
        this.sends = sends;
        next = firstNumber;
    }

    /** A file was opened; numbers go on where its own end. */
    void opened(Connection open) throws SQLException {
        highest = 0;
        try (var statement = open.createStatement();
                var row = statement.executeQuery("SELECT seq FROM sqlite_sequence WHERE name = 'outbox'")) {
            if (row.next()) {
                highest = row.getLong(1);
            }
        }
        if (unwritten.isEmpty() && highest > 0) {
            next = highest + 1;
        }
    }

    void take(List<Alert> fresh) {
        for (Alert alert : fresh) {
            unwritten.stream()
                    .filter(before -> alert.replaces(before.alert()))
                    .forEach(before -> marks.put(before.number(), replaced(before, alert)));
            unwritten.add(new Outbox.Entry(next, alert));
            next++;
        }
    }

    /** What a newer one replaces counts as arrived: after weeks without a broker nobody wants each hour's reminder. */
    private static Lanes.Mark replaced(Outbox.Entry before, Alert by) {
        return new Lanes.Mark(before, by.at().wall().epochMs());
    }

    void mark(List<Lanes.Mark> arrived) {
        arrived.forEach(mark -> marks.put(mark.entry().number(), mark));
    }

    boolean isWritten() {
        return unwritten.isEmpty() && marks.isEmpty();
    }

    /** Within a transaction; {@link #committed} when that has ended well. */
    void write(Connection open) throws SQLException {
        for (Outbox.Entry entry : unwritten) {
            replaceIn(open, entry.alert());
            Rows.alert(open, free(entry.number()), entry.alert(), sentMs(entry));
        }
        try (PreparedStatement statement = open.prepareStatement(
                "UPDATE outbox SET sent_ms = ? WHERE id = ? AND kind = ? AND subject = ? AND change = ?")) {
            for (Lanes.Mark mark : marks.values()) {
                statement.setLong(1, mark.epochMs());
                statement.setLong(2, mark.entry().number());
                statement.setString(3, mark.entry().alert().kind().name());
                statement.setString(4, mark.entry().alert().subject());
                statement.setString(5, mark.entry().alert().change().name());
                statement.executeUpdate();
            }
        }
    }

    /** The same for those that the disk has already. */
    private static void replaceIn(Connection open, Alert by) throws SQLException {
        if (by.change() != Alert.Change.REPEATED) {
            return;
        }
        try (PreparedStatement statement = open.prepareStatement(
                "UPDATE outbox SET sent_ms = ? WHERE sent_ms IS NULL AND incident = ? AND change = 'REPEATED'")) {
            statement.setLong(1, by.at().wall().epochMs());
            statement.setString(2, by.id());
            statement.executeUpdate();
        }
    }

    /** Where a file from another time has the number already, the next one free: nothing may be overwritten. */
    private long free(long number) {
        highest = number > highest ? number : highest + 1;
        return highest;
    }

    private @Nullable Long sentMs(Outbox.Entry entry) {
        Lanes.Mark mark = marks.get(entry.number());
        if (mark != null) {
            return mark.epochMs();
        }
        return sends ? null : Long.valueOf(entry.alert().at().wall().epochMs());
    }

    void committed() {
        unwritten.clear();
        marks.clear();
        next = Math.max(next, highest + 1);
    }

    /** The oldest that are to be sent. */
    List<Outbox.Entry> unsent(Connection open, int most) throws SQLException {
        List<Outbox.Entry> found = new ArrayList<>();
        for (Outbox.Entry entry : RecordReader.unsent(open, most + marks.size())) {
            if (!marks.containsKey(entry.number())) {
                found.add(entry);
            }
        }
        found.addAll(unwritten(most));
        return List.copyOf(found.subList(0, Math.min(most, found.size())));
    }

    /** Those of them that the disk has not taken. */
    List<Outbox.Entry> unwritten(int most) {
        return unwritten.stream()
                .filter(entry -> sends && !marks.containsKey(entry.number()))
                .limit(most)
                .toList();
    }
}
