package rimeward.adapter.journal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.alert.Alert;
import rimeward.core.Outcome;
import rimeward.core.Stepped;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.port.Courier;
import rimeward.port.Journal;
import rimeward.port.Keep;
import rimeward.port.Outbox;
import rimeward.record.FrameRow;
import rimeward.record.Keeping;
import rimeward.record.Night;
import rimeward.record.NightTally;
import rimeward.record.SavedState;
import rimeward.record.Switched;
import rimeward.record.Thinning;
import rimeward.site.Messaging;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The record in an SQLite file. The loop's thread calls {@link #record} and {@link #keep}, which only hand over; one writer thread
 * does the rest. Alerts and state are committed with a full sync; the courier is told of an alert after its commit. A file that is
 * damaged is set aside, a disk that refuses is tried again: control never waits for either.
 */
public final class SqliteJournal implements Journal, Keep, Outbox, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SqliteJournal.class);

    private final Site site;
    private final Lanes lanes;
    private final Thread thread;
    private final Optional<String> stateAtStart;
    private final Thinning thinning = new Thinning();
    private final NightTally tally;
    private RelaySet closed = RelaySet.none();

    private SqliteJournal(Site site, ZoneId zone, JournalLimits limits, Writer writer) {
        this.site = site;
        lanes = new Lanes(limits);
        tally = new NightTally(site, zone);
        stateAtStart = writer.begin(Database::newestState);
        writer.begin(RecordReader::newestNight).ifPresent(tally::resume);
        thread = new Thread(() -> writer.run(lanes), "journal");
        thread.setDaemon(true);
    }

    /**
     * Opens or makes the file and starts the writer. Never throws for what is wrong with the file: that is told.
     *
     * @param zone whose noon parts the nights, and by whose clock the tariff goes
     * @param clock for the name of a damaged file
     * @param courier told of every alert, once it is on the disk; called by the writer's thread
     * @param troubles told when the record itself is in trouble, and when that is over; called by the writer's thread
     */
    public static SqliteJournal open(
            Path file,
            Site site,
            ZoneId zone,
            Clock clock,
            JournalLimits limits,
            Courier courier,
            Consumer<Trouble> troubles) {
        boolean sends = !(site.messaging() instanceof Messaging.None);
        SqliteJournal journal =
                new SqliteJournal(site, zone, limits, new Writer(file, limits, clock, sends, courier, troubles));
        journal.thread.start();
        return journal;
    }

    /** The newest state that an earlier run left in the file, as text for {@link SavedState#parse}. */
    public Optional<String> stateAtStart() {
        return stateAtStart;
    }

    @Override
    public void record(Stepped stepped, List<Alert> alerts) {
        if (!alerts.isEmpty()) {
            lanes.tell(List.copyOf(alerts));
        }
        try {
            history(stepped.outcome(), alerts);
        } catch (RuntimeException e) {
            LOG.error("A frame could not be recorded", e);
        }
    }

    private void history(Outcome outcome, List<Alert> alerts) {
        int raised = 0;
        for (Alert alert : alerts) {
            raised += alert.change() == Alert.Change.RAISED ? 1 : 0;
        }
        Optional<Night> ended = tally.add(outcome, raised);
        Keeping keeping = thinning.look(outcome, !alerts.isEmpty() || ended.isPresent());
        if (keeping != Keeping.DROPPED) {
            List<Night> nights = new ArrayList<>(2);
            ended.ifPresent(nights::add);
            tally.open().ifPresent(nights::add);
            List<Switched> switches = Switched.between(site, closed, outcome);
            lanes.add(new Lanes.History(FrameRow.of(outcome, keeping == Keeping.CHANGE), switches, nights));
        }
        closed = outcome.guarded().closed();
    }

    @Override
    public void keep(SavedState state) {
        lanes.keep(state.toText());
    }

    @Override
    public void keep(PlanPromise plan) {
        lanes.keep(new Note(Note.Place.PLAN, plan.evening().toString(), plan.toText()));
    }

    @Override
    public void keep(PastNight night) {
        lanes.keep(new Note(Note.Place.PAST, night.evening().toString(), night.toText()));
    }

    @Override
    public void keepLearned(String name, String text) {
        lanes.keep(new Note(Note.Place.LEARNED, name, text));
    }

    @Override
    public void ask(int most, Consumer<List<Outbox.Entry>> answer) {
        lanes.ask(new Lanes.Ask(most, answer));
    }

    @Override
    public void sent(Outbox.Entry entry, long epochMs) {
        lanes.mark(new Lanes.Mark(entry, epochMs));
    }

    /** Waits until everything handed over before has been tried to be written. Not for the loop. */
    public void flush() throws InterruptedException {
        lanes.flush();
    }

    /** Waits until alerts and state handed over before have been tried to be written. Not for the loop. */
    void settle() throws InterruptedException {
        lanes.settle();
    }

    /** Writes what waits and ends the writer. */
    @Override
    public void close() {
        lanes.close();
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
