package rimeward.app;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * Tells systemd that the service is ready, alive or ending. By the {@code systemd-notify} tool: Java 17 has no datagram sockets for
 * files, and the tool needs no native code in this process. Once in {@link #EVERY_NS}, because each call starts a process.
 */
final class ServiceManager {
    /** A third of the unit's WatchdogSec. */
    private static final long EVERY_NS = 20_000_000_000L;

    private final @Nullable String socket = System.getenv("NOTIFY_SOCKET");
    private boolean ready;
    private long toldNs;

    /** After each finished cycle, and from nowhere else: a loop that hangs must not look alive. */
    void cycleDone() {
        long nowNs = System.nanoTime();
        if (!ready || nowNs - toldNs >= EVERY_NS) {
            tell(ready ? "WATCHDOG=1" : "READY=1");
            ready = true;
            toldNs = nowNs;
        }
    }

    void stopping() {
        tell("STOPPING=1");
    }

    private void tell(String what) {
        if (socket == null) {
            return;
        }
        try {
            new ProcessBuilder("systemd-notify", what)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            ready = false; // told again after the next cycle
        }
    }
}
