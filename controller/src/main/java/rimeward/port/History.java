package rimeward.port;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rimeward.core.outlook.PlanPromise;
import rimeward.record.FrameRow;
import rimeward.record.Night;

/**
 * What the record holds, for those who learn of it. For threads that may wait for the disk, which the control loop's is not. Each method
 * throws an unchecked exception that says what is wrong where the record cannot be read.
 */
public interface History {
    /**
     * Hands on each kept frame since then, the oldest first.
     *
     * @param epochMs time of day, ms since 1970 UTC
     */
    void eachFrameSince(long epochMs, Consumer<FrameRow> taker);

    /** All nights, the oldest first; the last may still go on. */
    List<Night> nights();

    /** What each night's plan promised, the oldest first. */
    List<PlanPromise> plans();

    /** What was learned under a name. */
    Optional<String> learned(String name);

    /** Where nothing is recorded. */
    static History none() {
        return new History() {
            @Override
            public void eachFrameSince(long epochMs, Consumer<FrameRow> taker) {}

            @Override
            public List<Night> nights() {
                return List.of();
            }

            @Override
            public List<PlanPromise> plans() {
                return List.of();
            }

            @Override
            public Optional<String> learned(String name) {
                return Optional.empty();
            }
        };
    }
}
