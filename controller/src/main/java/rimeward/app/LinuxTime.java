package rimeward.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.locks.LockSupport;
import rimeward.service.MachineTime;

/** The clocks of a Linux machine. */
final class LinuxTime implements MachineTime {
    /** Its time service leaves this behind once it has set the clock (systemd-timesyncd.service(8)). */
    private static final Path SET = Path.of("/run/systemd/timesync/synchronized");

    @Override
    public long monotonicNs() {
        return System.nanoTime();
    }

    @Override
    public long wallMs() {
        return System.currentTimeMillis();
    }

    @Override
    public boolean isWallSet() {
        return Files.exists(SET);
    }

    @Override
    public void sleepNs(long forNs) {
        LockSupport.parkNanos(this, forNs);
    }
}
