package rimeward.service;

/** Clocks that go only when told to. */
final class FakeTime implements MachineTime {
    private long nowNs = 7_000_000_000L;
    private long wallOffsetMs = 1_390_000_000_000L;
    private boolean set = true;

    @Override
    public long monotonicNs() {
        return nowNs;
    }

    @Override
    public long wallMs() {
        return nowNs / 1_000_000 + wallOffsetMs;
    }

    @Override
    public boolean isWallSet() {
        return set;
    }

    @Override
    public void sleepNs(long forNs) {
        nowNs += forNs;
    }

    void pass(double forS) {
        nowNs += (long) (forS * 1e9);
    }

    void setWall(double byS) {
        wallOffsetMs += (long) (byS * 1000);
    }

    void setByNetwork(boolean now) {
        set = now;
    }
}
