package rimeward.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * Whether anybody has set this machine's clock since it was switched on: a small computer has none that goes on without power. Asked
 * at the start, and each minute until it is so; the loop only looks.
 */
final class ClockTrust {
    /** systemd's own time service leaves this behind once it has set the clock (systemd-timesyncd.service(8)). */
    private static final Path BY_TIMESYNCD = Path.of("/run/systemd/timesync/synchronized");

    private static final long EVERY_MS = 60_000;
    private static final long PATIENCE_MS = 1_000;

    private volatile boolean set = ask();

    /** Begins to ask. */
    static ClockTrust begun() {
        ClockTrust trust = new ClockTrust();
        Thread asking = new Thread(trust::askUntilSet, "clock");
        asking.setDaemon(true);
        asking.start();
        return trust;
    }

    boolean isSet() {
        return set;
    }

    private void askUntilSet() {
        try {
            while (!set) {
                Thread.sleep(EVERY_MS);
                set = ask();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean ask() {
        return Files.exists(BY_TIMESYNCD) || isSaidByKernel();
    }

    /** The kernel knows whether any time service keeps its clock (adjtimex(2), STA_UNSYNC); timedatectl(1) tells. */
    private static boolean isSaidByKernel() {
        try {
            Process asked = new ProcessBuilder("timedatectl", "show", "--property=NTPSynchronized", "--value")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!asked.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                asked.destroyForcibly();
                return false;
            }
            byte[] said = asked.getInputStream().readAllBytes();
            return new String(said, StandardCharsets.US_ASCII).strip().equals("yes");
        } catch (IOException e) {
            return false; // no such tool: then nobody says so
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
