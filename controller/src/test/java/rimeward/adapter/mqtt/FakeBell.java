package rimeward.adapter.mqtt;

import java.util.ArrayDeque;
import java.util.Deque;

/** Time that only passes where somebody waits, and things that happen meanwhile. */
final class FakeBell implements Bell {
    /** Something that happens at a moment. */
    record Happening(long atMs, Runnable what) {}

    private final Deque<Happening> ahead = new ArrayDeque<>();
    private long nowMs;
    private boolean rung;

    /** In the order of their moments. */
    FakeBell at(long atMs, Runnable what) {
        ahead.add(new Happening(atMs, what));
        return this;
    }

    @Override
    public long nowMs() {
        return nowMs;
    }

    @Override
    public void ring() {
        rung = true;
    }

    @Override
    public void await(long mostMs) {
        long untilMs = nowMs + Math.max(1, mostMs);
        while (!rung && !ahead.isEmpty() && ahead.getFirst().atMs() <= untilMs) {
            Happening next = ahead.removeFirst();
            nowMs = Math.max(nowMs, next.atMs());
            next.what().run();
        }
        nowMs = rung ? nowMs : untilMs;
        rung = false;
    }

    /** Time passes inside a call that hangs. */
    void pass(long forMs) {
        nowMs += forMs;
    }
}
