package rimeward.adapter.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.alert.Alert;
import rimeward.port.Courier;
import rimeward.port.Outbox;
import rimeward.record.Night;

/**
 * The one thread that writes. What could not be written stays with it and is tried again with the next work: alerts and state until
 * they are on the disk, history until then too, while the lanes thin what follows.
 */
final class Writer {
    private static final Logger LOG = LoggerFactory.getLogger(Writer.class);
    private static final long DAY_MS = 86_400_000;

    private final Path file;
    private final JournalLimits limits;
    private final Clock clock;
    private final Courier courier;
    private final Consumer<Trouble> troubles;
    private final Outgoing outgoing;
    private final List<Lanes.History> history = new ArrayList<>();
    private @Nullable Connection connection;
    private @Nullable String unsavedState;
    private @Nullable String newestState;
    private final Map<String, Note> unsavedNotes = new TreeMap<>();
    private boolean refused;
    private boolean thinned;
    private long trimmedMs;

    /** @param sends whether somebody sends alerts on, and says when one has arrived */
    Writer(Path file, JournalLimits limits, Clock clock, boolean sends, Courier courier, Consumer<Trouble> troubles) {
        this.file = file;
        this.limits = limits;
        this.clock = clock;
        this.courier = courier;
        this.troubles = troubles;
        outgoing = new Outgoing(sends, clock.millis());
    }

    /** Opens the file where that is possible, before the thread begins, and gives what an earlier run left. */
    <T> Optional<T> begin(Read<T> read) {
        for (int tries = 0; tries < 2; tries++) {
            try {
                return read.from(connected());
            } catch (SQLException e) {
                answer(e);
            }
        }
        return Optional.empty();
    }

    /** Something to read from an open file. */
    interface Read<T> {
        Optional<T> from(Connection connection) throws SQLException;
    }

    void run(Lanes lanes) {
        try {
            for (boolean last = false; !last; lanes.tried()) {
                Lanes.Work work = lanes.next();
                last = work.last();
                take(work);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            disconnect();
        }
    }

    private void take(Lanes.Work work) {
        List<Alert> fresh = work.alerts();
        outgoing.take(fresh);
        outgoing.mark(work.marks());
        work.state().ifPresent(text -> unsavedState = text);
        work.notes().forEach(note -> unsavedNotes.put(note.key(), note));
        if (history.size() + work.history().size() <= limits.waitingRows()) {
            history.addAll(work.history());
            tellThinning(work.dropped());
        } else {
            tellThinning(work.dropped() + work.history().size());
        }
        if (!written()) {
            written(); // a damaged file has made way for a new one; a full disk is full still
        }
        work.asks().forEach(this::answer);
        fresh.forEach(this::tell); // on the disk, unless that refuses: then a warning counts for more than its record
    }

    private boolean written() {
        try {
            Connection open = connected();
            writeUrgent(open);
            writeHistory(open);
            recovered();
            return true;
        } catch (SQLException e) {
            answer(e);
            return false;
        } catch (RuntimeException | LinkageError e) { // whatever it is, alerts must go on being told
            LOG.error("The record {} could not be written", file, e);
            answer(new SQLException(e));
            return false;
        }
    }

    private void writeUrgent(Connection open) throws SQLException {
        String state = unsavedState;
        if (outgoing.isWritten() && state == null && unsavedNotes.isEmpty()) {
            return;
        }
        inTransaction(open, () -> {
            outgoing.write(open);
            if (state != null) {
                Rows.state(open, state);
            }
            for (Note note : unsavedNotes.values()) {
                Rows.note(open, note);
            }
        });
        outgoing.committed();
        newestState = state == null ? newestState : state;
        unsavedState = null;
        unsavedNotes.clear();
    }

    private void writeHistory(Connection open) throws SQLException {
        if (history.isEmpty()) {
            return;
        }
        Database.run(open, "PRAGMA synchronous = NORMAL");
        inTransaction(open, () -> {
            for (Lanes.History each : history) {
                Rows.frame(open, each.row());
                for (var switched : each.switches()) {
                    Rows.decision(open, switched);
                }
            }
            for (Night night : newestNights().values()) {
                Rows.night(open, night);
            }
            trim(open);
        });
        Database.run(open, "PRAGMA synchronous = FULL");
        history.clear();
        thinned = false;
    }

    private Map<String, Night> newestNights() {
        Map<String, Night> newest = new TreeMap<>();
        for (Lanes.History each : history) {
            each.nights().forEach(night -> newest.put(night.evening().toString(), night));
        }
        return newest;
    }

    private void trim(Connection open) throws SQLException {
        var wall = history.get(history.size() - 1).row().frame().tick().wall();
        if (wall.trusted() && wall.epochMs() - trimmedMs >= DAY_MS) {
            Trimming.at(open, limits, wall.epochMs());
            trimmedMs = wall.epochMs();
        }
    }

    /** Statements that stand or fall together. */
    private interface Statements {
        void run() throws SQLException;
    }

    private static void inTransaction(Connection open, Statements statements) throws SQLException {
        open.setAutoCommit(false);
        try {
            statements.run();
            open.commit();
        } catch (SQLException e) {
            rollBack(open, e);
            throw e; // and the connection is not used again
        }
        open.setAutoCommit(true);
    }

    private static void rollBack(Connection open, SQLException because) {
        try {
            open.rollback();
        } catch (SQLException e) {
            because.addSuppressed(e); // a full disk has rolled back by itself
        }
    }

    // ---- the file and its troubles

    private Connection connected() throws SQLException {
        Connection open = connection;
        if (open == null) {
            open = Database.open(file, limits);
            connection = open;
            outgoing.opened(open);
        }
        return open;
    }

    private void disconnect() {
        try (Connection open = connection) {
            connection = null;
        } catch (SQLException e) {
            LOG.warn("The record {} did not close: {}", file, e.getMessage());
        }
    }

    private void answer(SQLException e) {
        disconnect();
        if (Database.isDamage(e)) {
            setAside(e);
        } else if (!refused) {
            refused = true;
            tell(new Trouble(
                    Trouble.Kind.NOT_WRITABLE,
                    false,
                    "The record " + file + " cannot be written: " + e.getMessage()
                            + ". Control goes on without it. Make room on the disk, or mend it; the record then goes on by"
                            + " itself."));
        }
    }

    private void setAside(SQLException why) {
        try {
            Path aside = Database.setAside(file, clock.instant());
            unsavedState = unsavedState == null ? newestState : unsavedState;
            tell(new Trouble(
                    Trouble.Kind.SET_ASIDE,
                    false,
                    "The record " + file + " could not be used (" + why.getMessage() + "). It was renamed to "
                            + aside.getFileName()
                            + " and a new one was begun. Look at the disk: it may be wearing out."));
        } catch (IOException e) {
            LOG.warn("The damaged record {} cannot be renamed: {}", file, e.toString());
        }
    }

    private void recovered() {
        if (refused) {
            refused = false;
            tell(new Trouble(Trouble.Kind.NOT_WRITABLE, true, "The record " + file + " is written again."));
        }
    }

    private void tellThinning(long rows) {
        if (rows > 0 && !thinned) {
            thinned = true;
            tell(new Trouble(
                    Trouble.Kind.HISTORY_THINNED,
                    false,
                    "History waits to be written faster than the disk takes it; " + rows
                            + " rows were left out so far. Alerts and control state are kept."));
        }
    }

    private void tell(Trouble trouble) {
        LOG.warn("{}", trouble.text());
        try {
            troubles.accept(trouble);
        } catch (RuntimeException e) {
            LOG.error("Nobody could be told that the record is in trouble", e);
        }
    }

    private void answer(Lanes.Ask ask) {
        List<Outbox.Entry> found = outgoing.unwritten(ask.most());
        try {
            found = outgoing.unsent(connected(), ask.most());
        } catch (SQLException e) {
            answer(e); // then those at hand must do
        }
        try {
            ask.answer().accept(found);
        } catch (RuntimeException e) {
            LOG.error("Unsent alerts could not be handed on; they stand in the record", e);
        }
    }

    private void tell(Alert alert) {
        try {
            courier.tell(alert);
        } catch (RuntimeException e) {
            LOG.error("An alert could not be handed on; it stands in the record", e);
        }
    }
}
