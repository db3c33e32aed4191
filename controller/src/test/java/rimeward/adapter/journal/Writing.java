package rimeward.adapter.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.Stepped;

/** A program to be killed: writes alerts and states without end, and says on its output what it was told is on the disk. */
final class Writing {
    private Writing() {}

    public static void main(String[] args) throws InterruptedException, IOException {
        Tunnel tunnel = new Tunnel();
        try (SqliteJournal journal = SqliteJournal.open(
                Path.of(args[0]),
                Tunnel.SITE,
                ZoneOffset.UTC,
                Clock.fixed(Instant.EPOCH, ZoneOffset.UTC),
                new JournalLimits(60_000, 4096, 30, 400, 300_000, 800, 100_000),
                alert -> say("alert " + alert.text()),
                trouble -> say("trouble " + trouble.text()))) {
            int first = Integer.parseInt(args[1]);
            for (int number = first; System.in.available() == 0; number++) {
                Stepped stepped = tunnel.next().stepped();
                journal.record(stepped, List.of(alert(stepped, number)));
                journal.keep(Tunnel.state(number));
                journal.flush();
                say("state " + number);
            }
        }
    }

    private static Alert alert(Stepped stepped, int number) {
        return new Alert(
                "tank-full-test-tunnel-" + number,
                AlertKind.TANK_FULL,
                "test-tunnel",
                Alert.Change.RAISED,
                stepped.outcome().frame().tick(),
                Integer.toString(number));
    }

    private static void say(String line) {
        System.out.print(line + "\n");
        System.out.flush();
    }
}
