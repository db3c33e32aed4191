package rimeward.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** One program for each data folder: the service holds it while it runs, and whoever tries the hardware by hand. */
final class DataLock implements AutoCloseable {
    private final @Nullable FileChannel channel;

    private DataLock(@Nullable FileChannel channel) {
        this.channel = channel;
    }

    /** The lock in this folder, or null while another holds it. */
    static @Nullable DataLock take(Path data) throws IOException {
        return take(data, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    /**
     * The same without leaving a file of the caller's own behind, which the service, another user, could not open: where no service
     * has been yet, none holds it.
     */
    static @Nullable DataLock takeIfThere(Path data) throws IOException {
        return Files.exists(file(data)) ? take(data, StandardOpenOption.WRITE) : none();
    }

    /** No lock at all, for a folder that cannot hold one. */
    static DataLock none() {
        return new DataLock(null);
    }

    private static @Nullable DataLock take(Path data, OpenOption... options) throws IOException {
        FileChannel channel = FileChannel.open(file(data), options);
        FileLock lock = null;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            lock = null; // held by this very program
        } finally {
            if (lock == null) {
                channel.close();
            }
        }
        return lock == null ? null : new DataLock(channel);
    }

    private static Path file(Path data) {
        return data.resolve("rimeward.lock");
    }

    @Override
    public void close() throws IOException {
        if (channel != null) {
            channel.close();
        }
    }
}
