package rimeward.adapter.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rimeward.record.Csv;

/** A record as a folder with one CSV file for each table, and back, without loss. */
public final class RecordCsv {
    private static final String FIRST = "# Rimeward record, version ";

    private RecordCsv() {}

    /** Writes every table into the folder, which is made if need be. Throws {@link BadRecord}. */
    public static void export(Path file, Path folder) {
        RecordFile.read(file, connection -> {
            try {
                Files.createDirectories(folder);
                for (String table : Schema.TABLES) {
                    write(connection, table, folder.resolve(table + ".csv"));
                }
            } catch (IOException e) {
                throw new BadRecord(folder, "cannot be written: " + e.getMessage(), "name another folder");
            }
            return folder;
        });
    }

    private static void write(Connection connection, String table, Path to) throws IOException, SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT * FROM " + table + " ORDER BY rowid");
                Writer out = Files.newBufferedWriter(to, UTF_8)) {
            List<String> names = columns(row);
            out.write(FIRST + Schema.VERSION + "\n" + String.join(",", names) + "\n");
            while (row.next()) {
                List<@Nullable Object> cells = new ArrayList<>();
                for (int i = 1; i <= names.size(); i++) {
                    cells.add(row.getObject(i));
                }
                out.write(Csv.line(cells));
            }
        }
    }

    private static List<String> columns(ResultSet row) throws SQLException {
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            names.add(row.getMetaData().getColumnName(i));
        }
        return names;
    }

    /** Fills a new file from a folder that {@link #export} wrote. Throws {@link BadRecord}, and leaves no file behind then. */
    public static void importInto(Path file, Path folder) {
        if (Files.exists(file)) {
            throw new BadRecord(
                    file, "exists already", "import goes into a fresh file only: name another, or move this one");
        }
        try {
            fill(file, folder);
        } catch (BadRecord e) {
            removeHalf(file, e);
            throw e;
        } catch (SQLException e) {
            BadRecord refused =
                    new BadRecord(file, String.valueOf(e.getMessage()), "name a file in a folder that can be written");
            removeHalf(file, refused);
            throw refused;
        }
    }

    private static void removeHalf(Path file, BadRecord because) {
        try {
            Files.deleteIfExists(file);
            for (String tail : Database.TAILS) {
                Files.deleteIfExists(Database.sibling(file, tail));
            }
        } catch (IOException e) {
            because.addSuppressed(e);
        }
    }

    private static void fill(Path file, Path folder) throws SQLException {
        try (Connection connection = Database.open(file, JournalLimits.usual())) {
            connection.setAutoCommit(false);
            for (String table : Schema.TABLES) {
                readTable(connection, table, folder.resolve(table + ".csv"));
            }
            connection.commit();
        }
    }

    private static void readTable(Connection connection, String table, Path from) throws SQLException {
        try (BufferedReader lines = Files.newBufferedReader(from, UTF_8)) {
            String first = lines.readLine();
            if (!(FIRST + Schema.VERSION).equals(first)) {
                throw new BadRecord(
                        from,
                        1,
                        "is not \"" + FIRST + Schema.VERSION + "\"",
                        "export the record again with this program");
            }
            String header = lines.readLine();
            int columns = header(connection, table, from, header == null ? "" : header);
            int number = 3;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                insert(connection, table + " (" + header + ")", columns, from, number, line);
                number++;
            }
        } catch (IOException e) {
            throw new BadRecord(
                    from, "cannot be read: " + e, "name the folder that the export wrote, every table in it");
        }
    }

    /** Column names go into a statement, so only the table's own are let through. */
    private static int header(Connection connection, String table, Path from, String header) throws SQLException {
        List<String> names;
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT * FROM " + table + " LIMIT 0")) {
            names = columns(row);
        }
        if (!header.equals(String.join(",", names))) {
            throw new BadRecord(from, 2, "the columns are not " + String.join(",", names), "export the record again");
        }
        return names.size();
    }

    private static void insert(Connection connection, String into, int columns, Path from, int number, String line)
            throws SQLException {
        try {
            List<@Nullable Object> cells = Csv.parse(line);
            if (cells.size() != columns) {
                throw new BadRecord(
                        from,
                        number,
                        "has " + cells.size() + " cells, the header " + columns,
                        "mend or remove the line");
            }
            Rows.insert(connection, into, cells.toArray());
        } catch (IllegalArgumentException | SQLException e) {
            throw new BadRecord(from, number, String.valueOf(e.getMessage()), "mend or remove the line");
        }
    }
}
