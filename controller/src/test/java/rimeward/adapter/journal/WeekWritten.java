package rimeward.adapter.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import rimeward.record.SavedState;
import rimeward.site.RelaySet;

/**
 * Measures what a simulated week of 5 s ticks writes: bytes handed to the kernel (wchar of /proc/self/io), and those that went
 * to the block device (write_bytes). DEVELOPERS.md tells the command.
 */
final class WeekWritten {
    private static final int DAYS = 7;
    private static final int TICKS_A_DAY = 17_280;
    private static final int TICKS_A_MINUTE = 12;

    private WeekWritten() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path file = Path.of(args[0]);
        Tunnel tunnel = new Tunnel();
        long keeps = 0;
        long alerts = 0;
        long wrote = io("wchar");
        long reached = io("write_bytes");
        RelaySet closed = RelaySet.none();
        try (SqliteJournal journal = SqliteJournal.open(
                file,
                Tunnel.SITE,
                ZoneOffset.UTC,
                Clock.fixed(Instant.EPOCH, ZoneOffset.UTC),
                JournalLimits.usual(),
                alert -> {},
                trouble -> {})) {
            SavedState state = Tunnel.state(0);
            for (int i = 0; i < DAYS * TICKS_A_DAY; i++) {
                Tunnel.Ticked ticked = tunnel.next();
                RelaySet now = ticked.stepped().outcome().guarded().closed();
                journal.record(ticked.stepped(), ticked.alerts());
                alerts += ticked.alerts().size();
                if (i % TICKS_A_MINUTE == 0
                        || !now.equals(closed)
                        || !ticked.alerts().isEmpty()) {
                    journal.keep(state);
                    journal.settle();
                    keeps++;
                }
                closed = now;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "a day: %.1f MB handed to the kernel, %.1f MB to the device; %d states, %d alerts; file after %d days %.1f MB,"
                        + " %d frames%n",
                (io("wchar") - wrote) / 1e6 / DAYS,
                (io("write_bytes") - reached) / 1e6 / DAYS,
                keeps / DAYS,
                alerts / DAYS,
                DAYS,
                Files.size(file) / 1e6,
                RecordFile.frames(file).size());
    }

    private static long io(String what) throws IOException {
        return Files.readAllLines(Path.of("/proc/self/io")).stream()
                .filter(line -> line.startsWith(what + ": "))
                .mapToLong(line -> Long.parseLong(line.substring(what.length() + 2)))
                .sum();
    }
}
