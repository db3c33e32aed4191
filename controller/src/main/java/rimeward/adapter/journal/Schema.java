package rimeward.adapter.journal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** The tables, and the way from each version of them to the next. A version that was ever installed is never edited. */
final class Schema {
    /** Says in the file's header whose it is: "Rime". */
    static final int APPLICATION_ID = 0x52696d65;

    static final List<String> TABLES =
            List.of("frame", "decision", "outbox", "night", "state", "learned", "plan", "past");

    private static final List<List<String>> STEPS = List.of(
            List.of(
                    """
                    CREATE TABLE frame (id INTEGER PRIMARY KEY, at_ms INTEGER NOT NULL, trusted INTEGER NOT NULL,
                      number INTEGER NOT NULL, elapsed_ms INTEGER NOT NULL, change INTEGER NOT NULL, outage_s TEXT NOT NULL,
                      trust TEXT NOT NULL, holder TEXT NOT NULL, wish INTEGER NOT NULL, closed INTEGER NOT NULL,
                      overruled INTEGER NOT NULL, reasons TEXT NOT NULL, air_verdicts TEXT NOT NULL,
                      rh_verdicts TEXT NOT NULL, deliveries TEXT NOT NULL, outlook TEXT NOT NULL, sensors TEXT NOT NULL,
                      powers_w TEXT NOT NULL, tank_full TEXT NOT NULL, door_open TEXT NOT NULL)""",
                    """
                    CREATE TABLE decision (id INTEGER PRIMARY KEY, at_ms INTEGER NOT NULL, trusted INTEGER NOT NULL,
                      number INTEGER NOT NULL, elapsed_ms INTEGER NOT NULL, machine TEXT NOT NULL, is_on INTEGER NOT NULL,
                      overruled INTEGER NOT NULL, reason TEXT NOT NULL, sentence TEXT NOT NULL)""",
                    """
                    CREATE TABLE outbox (id INTEGER PRIMARY KEY AUTOINCREMENT, at_ms INTEGER NOT NULL,
                      trusted INTEGER NOT NULL, number INTEGER NOT NULL, elapsed_ms INTEGER NOT NULL, kind TEXT NOT NULL,
                      subject TEXT NOT NULL, change TEXT NOT NULL, text TEXT NOT NULL, sent_ms INTEGER)""",
                    """
                    CREATE TABLE night (evening TEXT PRIMARY KEY, bench_c REAL, outside_c REAL, seen_s REAL NOT NULL,
                      wet_s REAL NOT NULL, machines TEXT NOT NULL, cost REAL NOT NULL, alerts INTEGER NOT NULL)""",
                    "CREATE TABLE state (id INTEGER PRIMARY KEY CHECK (id = 1), text TEXT NOT NULL)"),
            List.of(
                    "ALTER TABLE night ADD COLUMN litres REAL NOT NULL DEFAULT 0",
                    "CREATE TABLE learned (name TEXT PRIMARY KEY, text TEXT NOT NULL)"),
            List.of(
                    "UPDATE outbox SET sent_ms = at_ms", // nobody has sent any so far, and old ones are no news
                    "CREATE INDEX outbox_unsent ON outbox (id) WHERE sent_ms IS NULL"),
            List.of(
                    "ALTER TABLE outbox ADD COLUMN incident TEXT NOT NULL DEFAULT ''",
                    "UPDATE outbox SET incident = 'old-' || id"), // nobody knew which belonged together
            List.of("CREATE TABLE plan (evening TEXT PRIMARY KEY, text TEXT NOT NULL)"),
            List.of("CREATE TABLE past (evening TEXT PRIMARY KEY, text TEXT NOT NULL)"),
            List.of( // the page asks for a day of thirteen months
                    "CREATE INDEX frame_at ON frame (at_ms)",
                    "CREATE INDEX decision_at ON decision (at_ms)",
                    "CREATE INDEX outbox_at ON outbox (at_ms)"));

    static final int VERSION = STEPS.size();

    private Schema() {}

    static int version(Connection connection) throws SQLException {
        return number(connection, "PRAGMA user_version");
    }

    /** Brings a file of any earlier version, or an empty one, to this one: all or nothing. */
    static void migrate(Connection connection) throws SQLException {
        int from = version(connection);
        if (from > VERSION) {
            throw new NewerFile(from);
        }
        if (from == VERSION) {
            return;
        }
        connection.setAutoCommit(false);
        try (Statement statement = connection.createStatement()) {
            for (List<String> step : STEPS.subList(from, VERSION)) {
                for (String sql : step) {
                    statement.execute(sql);
                }
            }
            statement.execute("PRAGMA application_id = " + APPLICATION_ID);
            statement.execute("PRAGMA user_version = " + VERSION);
            connection.commit();
        }
        connection.setAutoCommit(true); // after a failure the connection is closed, which rolls back
    }

    static int number(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            return row.next() ? row.getInt(1) : 0;
        }
    }
}
