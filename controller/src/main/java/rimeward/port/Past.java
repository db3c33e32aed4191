package rimeward.port;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.core.outlook.PlanPromise;
import rimeward.record.FrameRow;
import rimeward.record.Night;
import rimeward.record.Switched;

/**
 * What the record holds of the past, read beside the service that writes it: what happened in the last minutes may not be in it yet. Each method
 * waits for the disk, so control never calls one; each throws {@link Unreadable} where there is nothing to read. Times are times of day in ms
 * since 1970 UTC, the first included and the last not.
 */
public interface Past {
    /** Nights, the newest first; that one may still go on. */
    List<Night> nights(int most);

    /** What the nights' plans promised, the newest first. */
    List<PlanPromise> plans(int most);

    /** Hands on each kept frame of a while, in the order they were taken. */
    void eachFrame(long fromMs, long toMs, int most, Consumer<FrameRow> taker);

    /** Relays that changed, in order. */
    List<Switched> switches(long fromMs, long toMs, int most);

    /** What became of alerts, in order. */
    List<Alert> alerts(long fromMs, long toMs, int most);

    /** What the service has learned under a name. */
    Optional<String> learned(String name);

    /** Where nothing is recorded. */
    static Past none() {
        return new Past() {
            @Override
            public List<Night> nights(int most) {
                return List.of();
            }

            @Override
            public List<PlanPromise> plans(int most) {
                return List.of();
            }

            @Override
            public void eachFrame(long fromMs, long toMs, int most, Consumer<FrameRow> taker) {}

            @Override
            public List<Switched> switches(long fromMs, long toMs, int most) {
                return List.of();
            }

            @Override
            public List<Alert> alerts(long fromMs, long toMs, int most) {
                return List.of();
            }

            @Override
            public Optional<String> learned(String name) {
                return Optional.empty();
            }
        };
    }

    /** The record cannot be read at present. */
    final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public Unreadable(String why, Throwable cause) {
            super(why, cause);
        }
    }
}
