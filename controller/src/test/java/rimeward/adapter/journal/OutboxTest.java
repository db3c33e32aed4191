package rimeward.adapter.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.port.Outbox;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** An alert that was raised is sent some time, and one that has arrived is not sent again. */
class OutboxTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2025-11-24T16:00:00Z"), ZoneOffset.UTC);
    private static final Messaging BROKER = new Messaging.Mqtt(
            "localhost",
            1883,
            new Messaging.Security.Plain(false),
            new Messaging.Login.None(),
            "homie",
            List.of(),
            false);

    @TempDir
    private Path folder;

    private Path file = Path.of("");

    private SqliteJournal open(Messaging messaging) {
        Site site = Tunnel.SITE.with(messaging);
        return SqliteJournal.open(
                file.resolve("record.db"),
                site,
                ZoneOffset.UTC,
                CLOCK,
                JournalLimits.usual(),
                alert -> {},
                trouble -> {});
    }

    private static List<Outbox.Entry> unsent(SqliteJournal journal, int most) throws InterruptedException {
        List<Outbox.Entry> found = Collections.synchronizedList(new ArrayList<>());
        journal.ask(most, found::addAll);
        journal.settle();
        return found;
    }

    /** Returns those that are to be sent. */
    private static List<Alert> raise(SqliteJournal journal) throws InterruptedException {
        List<Alert> all = new ArrayList<>();
        for (Tunnel.Ticked ticked : new Tunnel().ticks(3000)) {
            journal.record(ticked.stepped(), ticked.alerts());
            ticked.alerts().forEach(fresh -> all.removeIf(fresh::replaces));
            all.addAll(ticked.alerts());
        }
        journal.settle();
        assertThat(all).hasSizeGreaterThan(5);
        return all;
    }

    @Test
    void whatWasNotSentIsReadBackInOrderAfterARestart() throws InterruptedException {
        file = folder;
        List<Alert> raised;
        try (SqliteJournal journal = open(BROKER)) {
            raised = raise(journal);
            List<Outbox.Entry> first = unsent(journal, 2);
            first.forEach(entry -> journal.sent(entry, 5));
        }
        try (SqliteJournal journal = open(BROKER)) {
            List<Outbox.Entry> left = unsent(journal, 1000);
            assertThat(left).extracting(Outbox.Entry::alert).isEqualTo(raised.subList(2, raised.size()));
            assertThat(left).extracting(Outbox.Entry::number).isSorted().doesNotHaveDuplicates();
            assertThat(unsent(journal, 3)).isEqualTo(left.subList(0, 3));
        }
    }

    @Test
    void numbersGoOnAfterARestart() throws InterruptedException {
        file = folder;
        long last;
        try (SqliteJournal journal = open(BROKER)) {
            raise(journal);
            List<Outbox.Entry> all = unsent(journal, 1000);
            all.forEach(entry -> journal.sent(entry, 5));
            last = all.get(all.size() - 1).number();
            assertThat(unsent(journal, 1000)).isEmpty();
        }
        try (SqliteJournal journal = open(BROKER)) {
            raise(journal);
            assertThat(unsent(journal, 1).get(0).number()).isEqualTo(last + 1);
        }
    }

    @Test
    void whatWasRaisedWhileNobodySentIsNotSentLater() throws InterruptedException {
        file = folder;
        try (SqliteJournal journal = open(new Messaging.None())) {
            raise(journal);
        }
        try (SqliteJournal journal = open(BROKER)) {
            assertThat(unsent(journal, 10)).isEmpty();
        }
    }

    @Test
    void aDiskThatRefusesHoldsNoAlertUpAndSendsNoneTwice() throws Exception {
        file = folder.resolve("card"); // there is none yet: nothing can be written
        List<Outbox.Entry> all;
        try (SqliteJournal journal = open(BROKER)) {
            List<Alert> raised = raise(journal);
            all = unsent(journal, 1000);
            assertThat(all).extracting(Outbox.Entry::alert).isEqualTo(raised);
            journal.sent(all.get(0), 5);
            assertThat(unsent(journal, 1000)).isEqualTo(all.subList(1, all.size()));
            Files.createDirectory(file);
            journal.sent(all.get(1), 6);
            assertThat(unsent(journal, 1000)).isEqualTo(all.subList(2, all.size()));
        }
        try (SqliteJournal journal = open(BROKER)) {
            assertThat(unsent(journal, 1000)).isEqualTo(all.subList(2, all.size()));
        }
    }

    @Test
    void ofManyRemindersOnlyTheNewestIsSent() throws Exception {
        file = folder.resolve("card");
        try (SqliteJournal journal = open(BROKER)) {
            for (boolean writable : List.of(false, true)) {
                if (writable) {
                    Files.createDirectory(file);
                }
                remind(journal, Alert.Change.RAISED, Alert.Change.REPEATED, Alert.Change.REPEATED);
                assertThat(unsent(journal, 10))
                        .extracting(entry -> entry.alert().change())
                        .containsExactly(
                                writable
                                        ? new Alert.Change[] {
                                            Alert.Change.RAISED, Alert.Change.RAISED, Alert.Change.REPEATED
                                        }
                                        : new Alert.Change[] {Alert.Change.RAISED, Alert.Change.REPEATED});
            }
        }
        try (SqliteJournal journal = open(BROKER)) {
            assertThat(unsent(journal, 10)).hasSize(3);
        }
    }

    private static void remind(SqliteJournal journal, Alert.Change... changes) throws InterruptedException {
        Tunnel.Ticked ticked = new Tunnel().ticks(1).get(0);
        for (Alert.Change change : changes) {
            journal.record(
                    ticked.stepped(),
                    List.of(new Alert(
                            "blind-tunnel-1",
                            AlertKind.BLIND,
                            "tunnel",
                            change,
                            ticked.stepped().outcome().frame().tick(),
                            "Nobody sees.")));
            journal.settle();
        }
    }
}
