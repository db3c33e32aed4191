package rimeward.map.planted.core.tunnel;

/** Fault: pure code that starts a thread. */
public final class StartsThread {
    public Thread make() {
        return new Thread(() -> {});
    }
}
