package rimeward.adapter.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.core.judgement.Verdict;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Senses;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Delivery;
import rimeward.port.Outbox;
import rimeward.record.FrameRow;
import rimeward.record.Lowest;
import rimeward.record.Night;
import rimeward.record.RowText;
import rimeward.record.Switched;
import rimeward.site.RelaySet;

/** Rows back into values. */
final class RecordReader {
    private RecordReader() {}

    static Optional<Night> newestNight(Connection connection) throws SQLException {
        List<Night> newest = nights(connection, "ORDER BY evening DESC LIMIT 1");
        return newest.stream().findFirst();
    }

    static List<Night> nights(Connection connection, String how) throws SQLException {
        return all(connection, "SELECT * FROM night " + how, RecordReader::night);
    }

    static List<FrameRow> frames(Connection connection) throws SQLException {
        return all(connection, "SELECT * FROM frame ORDER BY id", RecordReader::frame);
    }

    /** One by one, so that a month of them need not be held. */
    static void eachFrame(Connection connection, long sinceEpochMs, Consumer<FrameRow> taker) throws SQLException {
        eachFrame(connection, "WHERE at_ms >= " + sinceEpochMs + " ORDER BY id", taker);
    }

    static void eachFrame(Connection connection, String how, Consumer<FrameRow> taker) throws SQLException {
        each(connection, "SELECT * FROM frame " + how, RecordReader::frame, taker);
    }

    static List<Switched> switches(Connection connection, String how) throws SQLException {
        return all(connection, "SELECT * FROM decision " + how, RecordReader::switched);
    }

    static List<PlanPromise> newestPlans(Connection connection, int most) throws SQLException {
        return all(
                connection,
                "SELECT text FROM plan ORDER BY evening DESC LIMIT " + most,
                row -> PlanPromise.parse(row.getString("text")));
    }

    static List<PlanPromise> plans(Connection connection) throws SQLException {
        return all(
                connection, "SELECT text FROM plan ORDER BY evening", row -> PlanPromise.parse(row.getString("text")));
    }

    static List<PastNight> past(Connection connection) throws SQLException {
        return all(connection, "SELECT text FROM past ORDER BY evening", row -> PastNight.parse(row.getString("text")));
    }

    static Optional<String> learned(Connection connection, String name) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("SELECT text FROM learned WHERE name = ?")) {
            statement.setString(1, name);
            try (ResultSet row = statement.executeQuery()) {
                return row.next() ? Optional.of(row.getString(1)) : Optional.empty();
            }
        }
    }

    static List<Alert> alerts(Connection connection) throws SQLException {
        return alerts(connection, "ORDER BY id");
    }

    static List<Alert> alerts(Connection connection, String how) throws SQLException {
        return all(connection, "SELECT * FROM outbox " + how, RecordReader::alert);
    }

    /** The oldest that are to be sent. */
    static List<Outbox.Entry> unsent(Connection connection, int most) throws SQLException {
        return all(
                connection,
                "SELECT * FROM outbox WHERE sent_ms IS NULL ORDER BY id LIMIT " + most,
                row -> new Outbox.Entry(row.getLong("id"), alert(row)));
    }

    /** One row as a value. */
    private interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    private static <T> List<T> all(Connection connection, String query, Row<T> one) throws SQLException {
        List<T> found = new ArrayList<>();
        each(connection, query, one, found::add);
        return found;
    }

    private static <T> void each(Connection connection, String query, Row<T> one, Consumer<T> taker)
            throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            while (row.next()) {
                taker.accept(one.of(row));
            }
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new SQLException("a row cannot be understood: " + e.getMessage(), e);
        }
    }

    private static Night night(ResultSet row) throws SQLException {
        return new Night(
                LocalDate.parse(row.getString("evening")),
                lowest(row, "bench_c"),
                lowest(row, "outside_c"),
                row.getDouble("seen_s"),
                row.getDouble("wet_s"),
                RowText.list(row.getString("machines"), Night.Use::parse),
                row.getDouble("cost"),
                row.getDouble("litres"),
                row.getInt("alerts"));
    }

    private static Lowest lowest(ResultSet row, String column) throws SQLException {
        double airC = row.getDouble(column);
        return row.wasNull() ? new Lowest.Unseen() : new Lowest.Seen(airC);
    }

    private static Tick tick(ResultSet row) throws SQLException {
        return new Tick(
                row.getLong("number"),
                row.getLong("elapsed_ms"),
                new WallTime(row.getLong("at_ms"), row.getInt("trusted") == 1));
    }

    private static Switched switched(ResultSet row) throws SQLException {
        return new Switched(
                tick(row),
                row.getString("machine"),
                row.getInt("is_on") == 1,
                row.getInt("overruled") == 1,
                RowText.reason(row.getString("reason")));
    }

    private static Alert alert(ResultSet row) throws SQLException {
        return new Alert(
                row.getString("incident"),
                AlertKind.valueOf(row.getString("kind")),
                row.getString("subject"),
                Alert.Change.valueOf(row.getString("change")),
                tick(row),
                row.getString("text"));
    }

    private static FrameRow frame(ResultSet row) throws SQLException {
        Senses senses = new Senses(
                RowText.list(row.getString("sensors"), RowText::sensor),
                RowText.list(row.getString("powers_w"), RowText::reading),
                Signal.valueOf(row.getString("tank_full")),
                Signal.valueOf(row.getString("door_open")));
        return new FrameRow(
                new Frame(tick(row), senses),
                row.getInt("change") == 1,
                Double.parseDouble(row.getString("outage_s")),
                Trust.valueOf(row.getString("trust")),
                Holder.valueOf(row.getString("holder")),
                RelaySet.of(row.getInt("wish")),
                RelaySet.of(row.getInt("closed")),
                RelaySet.of(row.getInt("overruled")),
                RowText.list(row.getString("reasons"), RowText::reason),
                RowText.list(row.getString("air_verdicts"), Verdict::valueOf),
                RowText.list(row.getString("rh_verdicts"), Verdict::valueOf),
                RowText.list(row.getString("deliveries"), Delivery::valueOf),
                RowText.outlook(row.getString("outlook")));
    }
}
