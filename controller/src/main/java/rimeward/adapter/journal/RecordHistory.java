package rimeward.adapter.journal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rimeward.core.outlook.PlanPromise;
import rimeward.port.History;
import rimeward.record.FrameRow;
import rimeward.record.Night;

/** A record's file as those see it who learn of it; each look has a connection of its own, so the writer never waits. No file is an empty one. */
public record RecordHistory(Path file) implements History {
    @Override
    public void eachFrameSince(long epochMs, Consumer<FrameRow> taker) {
        if (exists()) {
            RecordFile.eachFrameSince(file, epochMs, taker);
        }
    }

    @Override
    public List<Night> nights() {
        return exists() ? RecordFile.nights(file) : List.of();
    }

    @Override
    public List<PlanPromise> plans() {
        return exists() ? RecordFile.plans(file) : List.of();
    }

    @Override
    public Optional<String> learned(String name) {
        return exists() ? RecordFile.learned(file, name) : Optional.empty();
    }

    private boolean exists() {
        return Files.isRegularFile(file);
    }
}
