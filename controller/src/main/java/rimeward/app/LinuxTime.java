package rimeward.app;

import java.util.concurrent.locks.LockSupport;
import rimeward.service.MachineTime;

/** The clocks of a Linux machine. */
final class LinuxTime implements MachineTime {
    private final ClockTrust trust = ClockTrust.begun();

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
        return trust.isSet();
    }

    @Override
    public void sleepNs(long forNs) {
        LockSupport.parkNanos(this, forNs);
    }
}
