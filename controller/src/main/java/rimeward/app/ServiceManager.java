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
            boolean told = tell(ready ? "WATCHDOG=1" : "READY=1");
            ready |= told;
            toldNs = told ? nowNs : toldNs;
        }
    }

    void stopping() {
        tell("STOPPING=1");
    }

    /** Whether it is told, or nobody wants to hear. */
    private boolean tell(String what) {
        if (socket == null) {
            return true;
        }
        try {
            new ProcessBuilder("systemd-notify", what)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            return false; // told again after the next cycle
        }
    }
}
