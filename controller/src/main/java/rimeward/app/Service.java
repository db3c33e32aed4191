package rimeward.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.Stepped;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.DutyLaw;
import rimeward.core.judgement.Inside;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.record.DamagedState;
import rimeward.record.SavedState;
import rimeward.service.BeatTicker;
import rimeward.service.ControlLoop;
import rimeward.service.MachineTime;
import rimeward.service.Restart;
import rimeward.service.StateKeeper;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Wiring;

/** Puts the service together, runs it, and leaves the relays in their stop state however it ends. */
final class Service {
    private final Site site;
    private final PrintWriter out;
    private final Sensors sensors;
    private final Relays relays;
    private final StateFile file;
    private final ControlLaw law = new DutyLaw();
    private final ControlCycle control;
    private final AlertBoard board;
    private final MachineTime time = new LinuxTime();
    private final ServiceManager manager = new ServiceManager();
    private final CountDownLatch ended = new CountDownLatch(1);
    private RelaySet closed = RelaySet.none();
    private boolean told;

    <D extends Sensors & Relays> Service(Site site, Path data, D devices, PrintWriter out) {
        this.site = site;
        this.out = out;
        sensors = devices;
        relays = devices;
        file = new StateFile(data);
        control = new ControlCycle(site, law);
        board = new AlertBoard(site);
    }

    /** Returns the exit code once control has ended; a signal ends it in order and the program with 0. */
    int run() throws IOException {
        String boot = boot();
        Optional<SavedState> saved = saved();
        Restart from = saved.map(s -> resumed(s, boot)).orElseGet(() -> new Restart(control.start(), 0));
        double outageS = saved.map(SavedState::lastOutageS).orElse(0.0);
        StateKeeper keeper = StateKeeper.of(site, law, boot, outageS, file);
        BeatTicker ticker = new BeatTicker(time, from.elapsedMs(), manager::cycleDone);
        stopOnSignal(ticker, Thread.currentThread());
        say("rimeward: " + site.name() + ", floor " + Plain.number(site.floorC()) + " °C, a decision every "
                + BeatTicker.BEAT_MS / 1000 + " s");
        try {
            new ControlLoop(
                            site,
                            control,
                            board,
                            ticker,
                            sensors,
                            tick -> Outlook.NONE,
                            relays,
                            (stepped, alerts) -> note(stepped),
                            keeper,
                            this::tell)
                    .run(from.state());
            return 0;
        } catch (RuntimeException | Error e) {
            say("rimeward: control itself failed, and the relays go to their stop state: " + e);
            e.printStackTrace(out);
            return 70; // EX_SOFTWARE: systemd starts it again
        } finally {
            relays.close(stopState());
            say("rimeward: stopped, relays in their stop state: " + site.inWords(stopState()));
            ended.countDown();
        }
    }

    // ---- start

    private Restart resumed(SavedState saved, String boot) {
        WallTime now = new WallTime(time.wallMs(), time.isWallSet());
        boolean sameBoot = !boot.isEmpty() && boot.equals(saved.boot());
        board.resume(saved.alerts(), saved.pulse().elapsedMs(), sameBoot);
        long outageMs = Restart.outageMs(saved, now);
        say("rimeward: takes up where it left off; rest times go on, "
                + (outageMs > 0
                        ? outageMs / 1000 + " s after the last decision"
                        : "and the time between counts as none"));
        return new Restart(
                StateKeeper.restored(saved, site, law, control), saved.pulse().elapsedMs() + outageMs);
    }

    private Optional<SavedState> saved() {
        try {
            return file.newest().map(SavedState::parse);
        } catch (DamagedState | IOException e) {
            say("rimeward: starts fresh. " + e.getMessage());
            return Optional.empty();
        }
    }

    /** The kernel's name for this run of the machine (random(4)). */
    private static String boot() {
        try {
            return Files.readString(Path.of("/proc/sys/kernel/random/boot_id")).strip();
        } catch (IOException e) {
            return "";
        }
    }

    // ---- end

    private void stopOnSignal(BeatTicker ticker, Thread loop) {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> endInOrder(ticker, loop), "stop"));
    }

    private void endInOrder(BeatTicker ticker, Thread loop) {
        if (ended.getCount() == 0) {
            return; // it ended by itself, with its own exit code
        }
        manager.stopping();
        ticker.stop();
        LockSupport.unpark(loop);
        try {
            ended.await();
        } catch (InterruptedException e) {
            return;
        }
        Runtime.getRuntime().halt(0); // a signal's own code would read as a failure
    }

    /** A relay without a line stands open. */
    private RelaySet stopState() {
        RelaySet set = RelaySet.none();
        for (int i = 0; i < site.machines().size(); i++) {
            boolean stays = site.machines().get(i).wiring() instanceof Wiring.GpioLine line && line.closedAtStop();
            set = stays ? set.with(i) : set;
        }
        return set;
    }

    // ---- what people read in the log

    private void note(Stepped stepped) {
        RelaySet now = stepped.outcome().guarded().closed();
        if (!told || !now.equals(closed)) {
            told = true;
            closed = now;
            String coldest = stepped.outcome().judgement().inside() instanceof Inside.Seen seen
                    ? Plain.number(seen.coldestC()) + " °C"
                    : "unknown";
            say("coldest bench " + coldest + ", on: " + site.inWords(now));
        }
    }

    private void tell(Alert alert) {
        say((alert.change() == Alert.Change.RAISED ? "ALERT " + alert.kind().title() + ": " : "") + alert.text());
    }

    private void say(String line) {
        out.println(line);
        out.flush();
    }
}
