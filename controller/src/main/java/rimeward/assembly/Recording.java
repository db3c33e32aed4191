package rimeward.assembly;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rimeward.adapter.journal.JournalLimits;
import rimeward.adapter.journal.RecordPast;
import rimeward.adapter.journal.SqliteJournal;
import rimeward.adapter.journal.Trouble;
import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.core.outlook.PastNight;
import rimeward.core.outlook.PlanPromise;
import rimeward.port.Journal;
import rimeward.port.Keep;
import rimeward.port.Outbox;
import rimeward.port.Past;
import rimeward.record.SavedState;
import rimeward.site.Site;

/**
 * The record as the service has it: in its file, or, where not even the database can be loaded, nowhere. Whoever reads along hears of
 * each decision, and of each alert once that is on the disk or cannot be.
 */
final class Recording implements Journal, Keep, Outbox, AutoCloseable {
    private final Audience audience;
    private final @Nullable SqliteJournal journal;
    private final MemoryOutbox inMemory;
    private final Path file;
    private volatile boolean failing;
    private volatile int setAside;

    Recording(Site site, Path file, Clock clock, Audience audience) {
        this.audience = audience;
        this.file = file;
        inMemory = new MemoryOutbox(clock.millis());
        journal = opened(site, file, clock);
    }

    private @Nullable SqliteJournal opened(Site site, Path file, Clock clock) {
        try {
            return SqliteJournal.open(
                    file, site, site.zone(), clock, JournalLimits.usual(), audience::told, this::note);
        } catch (RuntimeException | LinkageError e) {
            failing = true;
            audience.says("the record " + file + " cannot be opened, and control goes on without it: " + e);
            return null;
        }
    }

    /** Only the writer's thread comes here once that runs, and only this one before. */
    @SuppressWarnings("NonAtomicVolatileUpdate")
    private void note(Trouble trouble) {
        switch (trouble.kind()) {
            case NOT_WRITABLE -> failing = !trouble.over();
            case SET_ASIDE -> setAside++;
            case HISTORY_THINNED -> {} // it is in the log; the disk that is behind it is told of by itself
        }
    }

    /** What an earlier run left; empty where it left nothing. */
    Optional<String> stateAtStart() {
        return journal == null ? Optional.empty() : journal.stateAtStart();
    }

    @Override
    public void record(Stepped stepped, List<Alert> alerts) {
        if (journal == null) {
            alerts.forEach(inMemory::add);
            alerts.forEach(audience::told);
        } else {
            journal.record(stepped, alerts);
        }
        audience.decided(stepped);
    }

    @Override
    public boolean isFailing() {
        return failing;
    }

    @Override
    public int timesSetAside() {
        return setAside;
    }

    @Override
    public void keep(SavedState state) {
        if (journal != null) {
            journal.keep(state);
        }
    }

    @Override
    public void keep(PastNight night) {
        if (journal != null) {
            journal.keep(night);
        }
    }

    @Override
    public void keepLearned(String name, String text) {
        if (journal != null) {
            journal.keepLearned(name, text);
        }
    }

    /** What is in it, for those who learn of it. */
    Past past() {
        return new RecordPast(file);
    }

    @Override
    public void keep(PlanPromise plan) {
        if (journal != null) {
            journal.keep(plan);
        }
    }

    @Override
    public void ask(int most, Consumer<List<Outbox.Entry>> answer) {
        outbox().ask(most, answer);
    }

    @Override
    public void sent(Outbox.Entry entry, long epochMs) {
        outbox().sent(entry, epochMs);
    }

    private Outbox outbox() {
        return journal == null ? inMemory : journal;
    }

    /** Writes what waits. */
    @Override
    public void close() {
        if (journal != null) {
            journal.close();
        }
    }
}
