package rimeward.homie;

import java.util.List;

/** The first of its kind is written down at once, and then one line a minute that says how many there were: a flood must not fill a disk. */
final class SeldomLog {
    private static final long EVERY_MS = 60_000;

    private boolean begun;
    private long toldMs;
    private long untold;
    private String newest = "";

    /** One more happened; what is to be written down now. */
    List<String> add(String line, long nowMs) {
        newest = line;
        untold++;
        return due(nowMs);
    }

    /** What is to be written down by now. */
    List<String> due(long nowMs) {
        if (untold == 0 || (begun && nowMs - toldMs < EVERY_MS)) {
            return List.of();
        }
        String more = untold > 1 ? ", and " + (untold - 1) + " more since the last such line" : "";
        begun = true;
        toldMs = nowMs;
        untold = 0;
        return List.of(newest + more);
    }
}
