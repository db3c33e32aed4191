package rimeward.adapter.journal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.record.FrameRow;
import rimeward.record.Night;

/** Reads a record, also while the service writes it. Every method throws {@link BadRecord} where the file cannot be used. */
public final class RecordFile {
    private RecordFile() {}

    /** All nights, the oldest first; the last may still go on. */
    public static List<Night> nights(Path file) {
        return read(file, connection -> RecordReader.nights(connection, "ORDER BY evening"));
    }

    /** All kept frames, in the order they were taken. */
    public static List<FrameRow> frames(Path file) {
        return read(file, RecordReader::frames);
    }

    /** The frames kept since a time of day, ms since 1970 UTC, in the order they were taken. */
    public static List<FrameRow> framesSince(Path file, long epochMs) {
        List<FrameRow> found = new ArrayList<>();
        eachFrameSince(file, epochMs, found::add);
        return found;
    }

    /** The newest control state, as text for {@code SavedState.parse}; empty in a record without one. */
    public static Optional<String> state(Path file) {
        return read(file, Database::newestState);
    }

    /** What each night's plan promised, the oldest first: one a night, made last before dark. */
    public static List<PlanPromise> plans(Path file) {
        return read(file, RecordReader::plans);
    }

    /** What other ways would have taken of the nights that were, the oldest first. */
    public static List<PastNight> past(Path file) {
        return read(file, RecordReader::past);
    }

    /** What the service has learned under a name. */
    public static Optional<String> learned(Path file, String name) {
        return read(file, connection -> RecordReader.learned(connection, name));
    }

    /**
     * Hands on each kept frame since then, in the order they were taken.
     *
     * @param epochMs time of day, ms since 1970 UTC
     */
    public static void eachFrameSince(Path file, long epochMs, Consumer<FrameRow> taker) {
        read(file, connection -> {
            RecordReader.eachFrame(connection, epochMs, taker);
            return file;
        });
    }

    /** All alerts, in the order they were raised and cleared. */
    public static List<Alert> alerts(Path file) {
        return read(file, RecordReader::alerts);
    }

    /** Something to do with an open record. */
    interface Reading<T> {
        T from(Connection connection) throws SQLException;
    }

    static <T> T read(Path file, Reading<T> reading) {
        if (!Files.isRegularFile(file)) {
            throw new BadRecord(file, "there is no such file", "name the record of the service, usually record.db");
        }
        try (Connection connection = Database.openToRead(file)) {
            return reading.from(connection);
        } catch (SQLException e) {
            throw new BadRecord(
                    file,
                    String.valueOf(e.getMessage()),
                    "name a sound record; a damaged one may open in the sqlite3 tool");
        }
    }
}
