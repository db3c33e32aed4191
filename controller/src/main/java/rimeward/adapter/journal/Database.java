package rimeward.adapter.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Opens the file, tells damage from a disk that refuses, and sets a damaged file aside. */
final class Database {
    private static final int CORRUPT = 11; // SQLITE_CORRUPT and SQLITE_NOTADB of sqlite.org/rescode.html
    private static final int NOT_A_DATABASE = 26;

    /** What SQLite lays beside a file in write-ahead mode. */
    static final List<String> TAILS = List.of("-wal", "-shm");

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private Database() {}

    /** Opens for writing, made or migrated where needed. */
    static Connection open(Path file, JournalLimits limits) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try {
            run(connection, "PRAGMA busy_timeout = 5000");
            run(connection, "PRAGMA journal_mode = WAL");
            run(connection, "PRAGMA journal_size_limit = 4194304");
            run(connection, "PRAGMA max_page_count = " + limits.mostPages());
            run(connection, "PRAGMA synchronous = FULL");
            Schema.migrate(connection);
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    /** Opens an existing file of ours to read it; no write goes through. */
    static Connection openToRead(Path file) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try {
            run(connection, "PRAGMA busy_timeout = 5000");
            if (Schema.number(connection, "PRAGMA application_id") != Schema.APPLICATION_ID) {
                throw new SQLException("it is not a record of Rimeward");
            }
            if (Schema.version(connection) < Schema.VERSION) {
                Schema.migrate(connection);
            } else if (Schema.version(connection) > Schema.VERSION) {
                throw new NewerFile(Schema.version(connection));
            }
            run(connection, "PRAGMA query_only = 1");
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    static Optional<String> newestState(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT text FROM state WHERE id = 1")) {
            return row.next() ? Optional.of(row.getString(1)) : Optional.empty();
        }
    }

    static boolean isDamage(SQLException e) {
        int code = e.getErrorCode() & 0xff; // the upper bits say more about the same
        return e instanceof NewerFile || code == CORRUPT || code == NOT_A_DATABASE;
    }

    /** Renames the file and what belongs to it; the time goes into the name. */
    static Path setAside(Path file, Instant now) throws IOException {
        String suffix = ".damaged-" + STAMP.format(now);
        Path aside = sibling(file, suffix);
        for (int again = 2; Files.exists(aside); again++) {
            aside = sibling(file, suffix + "-" + again);
        }
        for (String tail : TAILS) {
            if (Files.exists(sibling(file, tail))) {
                Files.move(sibling(file, tail), sibling(aside, tail), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.move(file, aside);
        return aside;
    }

    static Path sibling(Path file, String suffix) {
        return file.resolveSibling(file.getFileName() + suffix);
    }

    static void run(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
