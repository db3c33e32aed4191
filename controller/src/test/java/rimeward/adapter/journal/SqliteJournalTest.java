package rimeward.adapter.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.alert.Alert;
import rimeward.core.Outcome;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.core.tunnel.Figure;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.SavedState;

class SqliteJournalTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2025-11-24T16:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final List<Alert> told = Collections.synchronizedList(new ArrayList<>());
    private final List<Trouble> troubles = Collections.synchronizedList(new ArrayList<>());

    private Path file() {
        return folder.resolve("record.db");
    }

    private SqliteJournal open(JournalLimits limits) {
        return SqliteJournal.open(file(), Tunnel.SITE, ZoneOffset.UTC, CLOCK, limits, told::add, troubles::add);
    }

    private static JournalLimits pages(int most) {
        JournalLimits usual = JournalLimits.usual();
        return new JournalLimits(
                usual.batchMs(),
                usual.waitingRows(),
                usual.minuteDays(),
                usual.frameDays(),
                usual.frameRows(),
                usual.alertDays(),
                most);
    }

    private List<Tunnel.Ticked> run(int ticks) {
        List<Tunnel.Ticked> all = new Tunnel().ticks(ticks);
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            all.forEach(ticked -> journal.record(ticked.stepped(), ticked.alerts()));
        }
        return all;
    }

    @Test
    void everyChangeComesBackAsItWas() {
        List<Tunnel.Ticked> all = run(2000);
        List<FrameRow> kept = RecordFile.frames(file());
        List<FrameRow> switched = new ArrayList<>();
        int closed = -1;
        for (Tunnel.Ticked ticked : all) {
            Outcome outcome = ticked.stepped().outcome();
            if (outcome.guarded().closed().bits() != closed) {
                switched.add(FrameRow.of(outcome, true));
                closed = outcome.guarded().closed().bits();
            }
        }
        assertThat(switched).hasSizeGreaterThan(5);
        assertThat(kept).containsAll(switched).hasSizeBetween(2000 / 12, 2000 / 2);
        assertThat(kept).allMatch(row -> FrameRow.of(at(all, row), row.change()).equals(row));
    }

    private static Outcome at(List<Tunnel.Ticked> all, FrameRow row) {
        return all.get((int) row.frame().tick().number()).stepped().outcome();
    }

    @Test
    void alertsAreOnTheDiskWhenTheCourierHearsOfThem() {
        List<Integer> stored = Collections.synchronizedList(new ArrayList<>());
        List<Tunnel.Ticked> all = new Tunnel().ticks(2000);
        try (SqliteJournal journal = SqliteJournal.open(
                file(),
                Tunnel.SITE,
                ZoneOffset.UTC,
                CLOCK,
                JournalLimits.usual(),
                alert -> {
                    told.add(alert);
                    stored.add(RecordFile.alerts(file()).lastIndexOf(alert));
                },
                troubles::add)) {
            all.forEach(ticked -> journal.record(ticked.stepped(), ticked.alerts()));
        }
        List<Alert> raised =
                all.stream().flatMap(each -> each.alerts().stream()).toList();
        assertThat(told).isEqualTo(raised).isNotEmpty();
        assertThat(stored).doesNotContain(-1);
        assertThat(RecordFile.alerts(file())).isEqualTo(raised);
    }

    @Test
    void theNewestStateIsThereAtTheNextStart() {
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            assertThat(journal.stateAtStart()).isEmpty();
            journal.keep(Tunnel.state(1));
            journal.keep(Tunnel.state(2));
        }
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            assertThat(journal.stateAtStart().map(SavedState::parse)).contains(Tunnel.state(2));
        }
    }

    @Test
    void whatWasPromisedReckonedAndLearnedIsThereForThoseWhoLearnOfIt() {
        PastNight night = new PastNight(LocalDate.of(2026, 1, 10), 5, 1.25, new Alternatives(true, 3, List.of()));
        Figure figure = new Figure(1, 0.5);
        PlanPromise promise =
                new PlanPromise(night.evening(), 7, 4, figure, figure, figure, figure, figure, 0.25, false, 0, 0, 0);
        Past past = new RecordPast(file());
        assertThatThrownBy(() -> past.learned("a")).isInstanceOf(Past.Unreadable.class); // no file yet
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            journal.keep(promise);
            journal.keep(night);
            journal.keepLearned("a", "one\ntwo");
            journal.keepLearned("b", "other");
            journal.keepLearned("a", "three");
        }
        assertThat(past.plans(9)).containsExactly(promise);
        assertThat(RecordFile.past(file())).containsExactly(night);
        assertThat(past.learned("a")).contains("three");
        assertThat(past.learned("b")).contains("other");
        assertThat(past.learned("c' OR '1'='1")).isEmpty();
    }

    @Test
    void aFileOfVersionOneIsBroughtForward() throws SQLException {
        try (Connection old = DriverManager.getConnection("jdbc:sqlite:" + file())) {
            for (String sql : List.of(
                    "CREATE TABLE frame (id INTEGER PRIMARY KEY, at_ms INTEGER NOT NULL, trusted INTEGER NOT NULL,"
                            + " number INTEGER NOT NULL, elapsed_ms INTEGER NOT NULL, change INTEGER NOT NULL, outage_s TEXT NOT"
                            + " NULL, trust TEXT NOT NULL, holder TEXT NOT NULL, wish INTEGER NOT NULL, closed INTEGER NOT NULL,"
                            + " overruled INTEGER NOT NULL, reasons TEXT NOT NULL, air_verdicts TEXT NOT NULL, rh_verdicts TEXT"
                            + " NOT NULL, deliveries TEXT NOT NULL, outlook TEXT NOT NULL, sensors TEXT NOT NULL, powers_w TEXT"
                            + " NOT NULL, tank_full TEXT NOT NULL, door_open TEXT NOT NULL)",
                    "CREATE TABLE decision (id INTEGER PRIMARY KEY, at_ms INTEGER NOT NULL, trusted INTEGER NOT NULL,"
                            + " number INTEGER NOT NULL, elapsed_ms INTEGER NOT NULL, machine TEXT NOT NULL, is_on INTEGER NOT"
                            + " NULL, overruled INTEGER NOT NULL, reason TEXT NOT NULL, sentence TEXT NOT NULL)",
                    "CREATE TABLE outbox (id INTEGER PRIMARY KEY AUTOINCREMENT, at_ms INTEGER NOT NULL, trusted INTEGER NOT"
                            + " NULL, number INTEGER NOT NULL, elapsed_ms INTEGER NOT NULL, kind TEXT NOT NULL, subject TEXT NOT"
                            + " NULL, change TEXT NOT NULL, text TEXT NOT NULL, sent_ms INTEGER)",
                    "CREATE TABLE night (evening TEXT PRIMARY KEY, bench_c REAL, outside_c REAL, seen_s REAL NOT NULL,"
                            + " wet_s REAL NOT NULL, machines TEXT NOT NULL, cost REAL NOT NULL, alerts INTEGER NOT NULL)",
                    "CREATE TABLE state (id INTEGER PRIMARY KEY CHECK (id = 1), text TEXT NOT NULL)",
                    "INSERT INTO night VALUES ('2025-01-05', 4.25, NULL, 86400, 60, 'dryer:1.5:3', 0.45, 2)",
                    "INSERT INTO state VALUES (1, 'as it was')",
                    "INSERT INTO outbox VALUES (7, 1000, 1, 3, 5, 'TANK_FULL', 'site', 'RAISED', 'Empty it.', NULL)",
                    "PRAGMA user_version = 1")) {
                Database.run(old, sql);
            }
        }
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            assertThat(journal.stateAtStart()).contains("as it was");
        }
        assertThat(troubles).isEmpty();
        assertThat(RecordFile.alerts(file()))
                .singleElement()
                .matches(alert -> alert.id().equals("old-7") && alert.text().equals("Empty it."));
        assertThat(RecordFile.nights(file()))
                .singleElement()
                .matches(night -> night.litresEstimated() == 0
                        && night.alerts() == 2
                        && night.machines().get(0).kWh() == 1.5);
    }

    @Test
    void aDamagedFileIsSetAsideAndTold() throws IOException {
        Files.writeString(
                file(), "this was a record once, before the card wore out ".repeat(200), StandardCharsets.UTF_8);
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            assertThat(journal.stateAtStart()).isEmpty();
            journal.keep(Tunnel.state(7));
        }
        assertThat(folder.resolve("record.db.damaged-20251124T160000Z")).isRegularFile();
        assertThat(troubles).extracting(Trouble::kind).containsExactly(Trouble.Kind.SET_ASIDE);
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            assertThat(journal.stateAtStart().map(SavedState::parse)).contains(Tunnel.state(7));
        }
    }

    @Test
    void damageInMidRunCostsNeitherStateNorTheNextAlert() throws Exception {
        Tunnel tunnel = new Tunnel();
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            journal.keep(Tunnel.state(1));
            journal.flush();
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file())) {
                Database.run(other, "PRAGMA wal_checkpoint(TRUNCATE)");
            }
            byte[] bytes = Files.readAllBytes(file());
            Arrays.fill(bytes, (byte) 0x5a);
            Files.write(file(), bytes);
            Files.deleteIfExists(folder.resolve("record.db-wal"));
            List<Tunnel.Ticked> all = tunnel.ticks(2000);
            all.forEach(ticked -> journal.record(ticked.stepped(), ticked.alerts()));
            journal.keep(Tunnel.state(2));
        }
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            assertThat(journal.stateAtStart().map(SavedState::parse)).contains(Tunnel.state(2));
        }
        assertThat(told).isNotEmpty();
        assertThat(troubles).extracting(Trouble::kind).containsExactly(Trouble.Kind.SET_ASIDE);
    }

    @Test
    void aFullDiskIsToldOnceAndAlertsAreToldAllTheSame() {
        List<Tunnel.Ticked> all = new Tunnel().ticks(8000);
        try (SqliteJournal journal = open(pages(12))) {
            all.forEach(ticked -> journal.record(ticked.stepped(), ticked.alerts()));
        }
        assertThat(troubles).singleElement().satisfies(trouble -> {
            assertThat(trouble.kind()).isEqualTo(Trouble.Kind.NOT_WRITABLE);
            assertThat(trouble.text()).contains("database or disk is full");
        });
        assertThat(told)
                .isEqualTo(all.stream().flatMap(each -> each.alerts().stream()).toList());
    }

    @Test
    void whatWaitedIsWrittenOnceTheDiskIsThere() throws Exception {
        Path missing = folder.resolve("card").resolve("record.db");
        Tunnel tunnel = new Tunnel();
        List<Tunnel.Ticked> all = tunnel.ticks(2000);
        try (SqliteJournal journal = SqliteJournal.open(
                missing, Tunnel.SITE, ZoneOffset.UTC, CLOCK, JournalLimits.usual(), told::add, troubles::add)) {
            all.forEach(ticked -> journal.record(ticked.stepped(), ticked.alerts()));
            journal.flush();
            Files.createDirectory(missing.getParent());
            journal.keep(Tunnel.state(3));
            journal.flush();
            assertThat(RecordFile.alerts(missing)).isEqualTo(told).isNotEmpty();
        }
        assertThat(troubles)
                .extracting(Trouble::kind, Trouble::over)
                .containsExactly(tuple(Trouble.Kind.NOT_WRITABLE, false), tuple(Trouble.Kind.NOT_WRITABLE, true));
        assertThat(RecordFile.frames(missing)).hasSizeGreaterThan(150);
    }

    @Test
    void aNightGoesOnAfterARestart() {
        Tunnel tunnel = new Tunnel();
        for (int part = 0; part < 2; part++) {
            try (SqliteJournal journal = open(JournalLimits.usual())) {
                tunnel.ticks(1000).forEach(ticked -> journal.record(ticked.stepped(), ticked.alerts()));
            }
        }
        assertThat(RecordFile.nights(file())).singleElement().matches(night -> night.seenS() > 1900 * 5);
    }

    @Test
    void anExportComesBackTheSame() throws SQLException {
        run(3000);
        try (SqliteJournal journal = open(JournalLimits.usual())) {
            journal.keep(Tunnel.state(5));
        }
        Path copy = folder.resolve("copy.db");
        RecordCsv.export(file(), folder.resolve("out"));
        RecordCsv.importInto(copy, folder.resolve("out"));
        RecordCsv.export(copy, folder.resolve("again"));
        for (String table : Schema.TABLES) {
            Path one = folder.resolve("out").resolve(table + ".csv");
            assertThat(one).hasSameTextualContentAs(folder.resolve("again").resolve(table + ".csv"));
            assertThat(rows(copy, table)).isEqualTo(rows(file(), table));
        }
        assertThat(rows(copy, "frame").size()).isGreaterThan(200);
        assertThat(RecordFile.frames(copy)).isEqualTo(RecordFile.frames(file()));
    }

    private static List<List<Optional<Object>>> rows(Path file, String table) throws SQLException {
        List<List<Optional<Object>>> rows = new ArrayList<>();
        try (Connection connection = Database.openToRead(file);
                var statement = connection.createStatement();
                var row = statement.executeQuery("SELECT * FROM " + table + " ORDER BY rowid")) {
            while (row.next()) {
                List<Optional<Object>> cells = new ArrayList<>();
                for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                    cells.add(Optional.ofNullable(row.getObject(i)));
                }
                rows.add(cells);
            }
        }
        return rows;
    }
}
