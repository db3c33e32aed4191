package rimeward.map.planted.alert;

/** No fault: only pure code may not start a thread, and {@code alert} is not on that list. */
public final class StartsThread {
    public Thread make() {
        return new Thread(() -> {});
    }
}
