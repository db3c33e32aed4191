package rimeward.adapter.pi;

import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Tells the log once when something goes, and once when it is back; what goes for a moment only is not worth a line. For one thread. */
final class Told {
    private static final Logger LOG = LoggerFactory.getLogger(PiSensors.class);

    /** Also the time that everything has at start to give its first sign. */
    private static final long PATIENCE_NS = 5_000_000_000L;

    private boolean gone;
    private boolean told;
    private long goneNs;

    void look(boolean goneNow, long nowNs, Supplier<String> lost, Supplier<String> back) {
        if (goneNow && !gone) {
            goneNs = nowNs;
        }
        gone = goneNow;
        if (gone && !told && nowNs - goneNs >= PATIENCE_NS) {
            told = true;
            LOG.warn(lost.get());
        } else if (!gone && told) {
            told = false;
            LOG.info(back.get());
        }
    }
}
