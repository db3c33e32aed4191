package rimeward.adapter.pi;

import java.io.File;
import java.nio.file.Path;

/** The disk that the record is on. One that cannot be asked says nothing: whether it can be written, the record tells by itself. */
final class WatchedDisk implements Watched {
    static final long PACE_MS = 60_000;

    /** Less room than this share of the disk is little, or than this many bytes, whichever is less. Own choice. */
    private static final double LITTLE_SHARE = 0.05;

    private static final long LITTLE_BYTES = 256L << 20;

    private final File folder;
    private volatile boolean nearlyFull;

    /** @param folder on the disk */
    WatchedDisk(Path folder) {
        this.folder = folder.toFile();
    }

    @Override
    public void ask() {
        nearlyFull = isNearlyFull(folder.getUsableSpace(), folder.getTotalSpace());
    }

    /** A disk that cannot be asked has neither room nor size. */
    static boolean isNearlyFull(long usableBytes, long totalBytes) {
        return usableBytes < LITTLE_BYTES && usableBytes < LITTLE_SHARE * totalBytes;
    }

    boolean isNearlyFull() {
        return nearlyFull;
    }
}
