package rimeward.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import rimeward.port.Keep;
import rimeward.record.SavedState;

/**
 * The newest state in a file of its own, until the database keeps it: written beside, forced to the disk, and moved into place, so
 * that a power cut leaves the old one or the new one.
 */
final class StateFile implements Keep {
    private final Path file;
    private final Path beside;

    StateFile(Path folder) {
        file = folder.resolve("state.txt");
        beside = folder.resolve("state.new");
    }

    /** The text that was kept last; empty before the first time. */
    Optional<String> newest() throws IOException {
        return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    }

    @Override
    public void keep(SavedState state) {
        try (FileChannel out = FileChannel.open(
                beside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer text = ByteBuffer.wrap(state.toText().getBytes(UTF_8));
            while (text.hasRemaining()) {
                out.write(text);
            }
            out.force(true);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
