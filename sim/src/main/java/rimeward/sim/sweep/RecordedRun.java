package rimeward.sim.sweep;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import rimeward.adapter.journal.JournalLimits;
import rimeward.adapter.journal.RecordFile;
import rimeward.adapter.journal.RecordPast;
import rimeward.adapter.journal.SqliteJournal;
import rimeward.adapter.journal.Trouble;
import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.port.Journal;
import rimeward.port.Outbox;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Messaging;
import rimeward.site.Site;

/**
 * One winter with the service's own record and outbox beside it, in a file, and a broker that is away for hours now and then. Afterwards
 * nothing that was told may be missing, double or out of order, neither on the disk nor with the broker.
 */
final class RecordedRun implements Journal {
    private static final int DRAIN_EVERY_TICKS = 12; // each simulated minute
    private static final int WAIT_EVERY_TICKS = 1500; // about two hours
    private static final long BROKER_SPELL_S = 5 * 3600; // there and away by turns
    private static final int AT_ONCE = 8;
    private static final int MOST_ROWS = 1_000_000;

    /** What makes relays fall without a decision, or bends the record's clock: then switches cannot be counted against each other. */
    private static final Set<FaultKind> BLUR =
            EnumSet.of(FaultKind.POWER_CUT, FaultKind.CONTROLLER_RESTART, FaultKind.CLOCK_JUMP);

    private final Scenario scenario;
    private final Path file;
    private final SqliteJournal journal;
    private final List<Alert> told = new ArrayList<>();
    private final List<Outbox.Entry> arrived = new ArrayList<>(); // the writer's thread
    private final List<Alert> onDisk = new ArrayList<>(); // the writer's thread
    private final List<Trouble> troubles = new ArrayList<>(); // the writer's thread
    private long tick;

    /** @param folder of its own */
    RecordedRun(Scenario scenario, Path folder) {
        this.scenario = scenario;
        file = folder.resolve("record.db");
        Clock clock = Clock.fixed(Instant.ofEpochSecond(scenario.startEpochS()), ZoneOffset.UTC);
        journal = SqliteJournal.open(
                file,
                sending(scenario.site()),
                ZoneOffset.UTC,
                clock,
                JournalLimits.usual(),
                onDisk::add,
                troubles::add);
    }

    /** An outbox is kept only where somebody sends it on; who that would be is never asked here. */
    private static Site sending(Site site) {
        return site.with(new Messaging.Mqtt(
                "localhost",
                1883,
                new Messaging.Security.Plain(false),
                new Messaging.Login.None(),
                "homie",
                List.of(),
                false));
    }

    @Override
    public void record(Stepped stepped, List<Alert> alerts) {
        told.addAll(alerts);
        journal.record(stepped, alerts);
        tick++;
        if (tick % WAIT_EVERY_TICKS == 0) {
            waitForTheDisk();
        }
        long nowS = tick * scenario.tickS();
        if (tick % DRAIN_EVERY_TICKS == 0 && nowS / BROKER_SPELL_S % 2 == 0) {
            journal.ask(AT_ONCE, this::send);
        }
    }

    /** A winter passes in a second, and no disk keeps up with that. */
    private void waitForTheDisk() {
        try {
            journal.flush();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // the end of the run hears of it
        }
    }

    private void send(List<Outbox.Entry> entries) {
        for (Outbox.Entry entry : entries) {
            if (arrived.stream()
                    .noneMatch(before -> before.number() == entry.number())) { // asked again before the mark was read
                arrived.add(entry);
            }
            journal.sent(entry, entry.alert().at().wall().epochMs());
        }
    }

    /** Runs the winter to its end, and says what is wrong with the record or with what was sent. */
    List<Broken> broken(LawChoice law) {
        try {
            RunResult result = Replay.recorded(scenario, law, this);
            drain();
            journal.close();
            return compared(result);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of(found("the check was interrupted"));
        } finally {
            journal.close();
        }
    }

    /** The broker is back for good. */
    private void drain() throws InterruptedException {
        boolean[] empty = {false};
        while (!empty[0]) {
            journal.flush();
            CountDownLatch answered = new CountDownLatch(1);
            journal.ask(AT_ONCE, entries -> {
                send(entries);
                empty[0] = entries.isEmpty();
                answered.countDown();
            });
            answered.await();
        }
    }

    private List<Broken> compared(RunResult result) {
        List<Broken> broken = new ArrayList<>();
        troubles.forEach(trouble -> broken.add(found(trouble.text())));
        List<Alert> kept = RecordFile.alerts(file);
        if (!kept.equals(told)) {
            broken.add(found(told.size() + " alerts were told and " + kept.size() + " are on the disk, or other ones"));
        }
        if (!onDisk.equals(told)) {
            broken.add(found("alerts were handed on that the disk had not, or not in order"));
        }
        sent(broken);
        if (scenario.faults().faults().stream().map(Fault::kind).noneMatch(BLUR::contains)) {
            switches(result, broken);
        }
        return broken;
    }

    private void sent(List<Broken> broken) {
        for (int i = 1; i < arrived.size(); i++) {
            if (arrived.get(i).number() <= arrived.get(i - 1).number()) {
                broken.add(found("alert " + arrived.get(i).number() + " was sent after "
                        + arrived.get(i - 1).number()));
            }
        }
        List<Alert> there = arrived.stream().map(Outbox.Entry::alert).toList();
        for (int i = 0; i < told.size(); i++) {
            Alert alert = told.get(i);
            boolean replaced = told.subList(i + 1, told.size()).stream().anyMatch(later -> later.replaces(alert));
            if (!there.contains(alert) && !replaced) {
                broken.add(found("an alert never arrived: " + alert.change() + " " + alert.id()));
            }
        }
    }

    private void switches(RunResult result, List<Broken> broken) {
        int kept = new RecordPast(file).switches(0, Long.MAX_VALUE, MOST_ROWS).size();
        if (kept != result.switches().size()) {
            broken.add(found(result.switches().size() + " switches were made and " + kept + " are on the disk"));
        }
    }

    private Broken found(String text) {
        return new Broken("record", scenario.startEpochS(), 0, text);
    }
}
