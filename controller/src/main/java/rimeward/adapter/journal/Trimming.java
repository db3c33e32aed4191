package rimeward.adapter.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Thins old rows, a day's worth a day, so that the file stays within its limits; freed pages are used again. */
final class Trimming {
    private static final long DAY_MS = 86_400_000;

    private Trimming() {}

    /** Within the transaction of the batch whose newest row is of {@code nowMs} (time of day, trusted). */
    static void at(Connection connection, JournalLimits limits, long nowMs) throws SQLException {
        delete(
                connection,
                "frame WHERE change = 0 AND at_ms < ? AND (at_ms / 60000) % 10 <> 0",
                nowMs - limits.minuteDays() * DAY_MS);
        delete(connection, "frame WHERE at_ms < ?", nowMs - limits.frameDays() * DAY_MS);
        delete(connection, "decision WHERE at_ms < ?", nowMs - limits.frameDays() * DAY_MS);
        delete(connection, "outbox WHERE at_ms < ?", nowMs - limits.alertDays() * DAY_MS);
        delete(connection, "frame WHERE id <= (SELECT max(id) FROM frame) - ? AND change = 0", limits.frameRows());
        delete(connection, "frame WHERE id <= (SELECT max(id) FROM frame) - ?", 2L * limits.frameRows());
        delete(connection, "decision WHERE id <= (SELECT max(id) FROM decision) - ?", limits.frameRows());
    }

    private static void delete(Connection connection, String what, long bound) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("DELETE FROM " + what)) {
            statement.setLong(1, bound);
            statement.executeUpdate();
        }
    }
}
