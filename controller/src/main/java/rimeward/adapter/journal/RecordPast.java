package rimeward.adapter.journal;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.core.outlook.PlanPromise;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;

/** Reads the record by a connection of its own, opened for each question, so that a file set aside is let go of. From any thread. */
public final class RecordPast implements Past {
    private final Path file;

    /** @param file the service's; it need not be there yet */
    public RecordPast(Path file) {
        this.file = file;
    }

    @Override
    public List<Night> nights(int most) {
        return read(connection -> RecordReader.nights(connection, "ORDER BY evening DESC LIMIT " + most));
    }

    @Override
    public List<PlanPromise> plans(int most) {
        return read(connection -> RecordReader.newestPlans(connection, most));
    }

    @Override
    public void eachFrame(long fromMs, long toMs, int most, Consumer<FrameRow> taker) {
        read(connection -> {
            RecordReader.eachFrame(connection, span(fromMs, toMs, most), taker);
            return file;
        });
    }

    @Override
    public List<Switched> switches(long fromMs, long toMs, int most) {
        return read(connection -> RecordReader.switches(connection, span(fromMs, toMs, most)));
    }

    @Override
    public List<Alert> alerts(long fromMs, long toMs, int most) {
        return read(connection -> RecordReader.alerts(connection, span(fromMs, toMs, most)));
    }

    @Override
    public Optional<String> learned(String name) {
        return read(connection -> RecordReader.learned(connection, name));
    }

    private static String span(long fromMs, long toMs, int most) {
        return "WHERE at_ms >= " + fromMs + " AND at_ms < " + toMs + " ORDER BY id LIMIT " + most;
    }

    private interface Question<T> {
        T ask(Connection connection) throws SQLException;
    }

    private <T> T read(Question<T> question) {
        try {
            return RecordFile.read(file, question::ask);
        } catch (BadRecord e) {
            throw new Unreadable("The record cannot be read at present.", e);
        }
    }
}
