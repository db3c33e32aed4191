package rimeward.adapter.forecast;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.function.Supplier;
import rimeward.core.outlook.Forecast;
import rimeward.core.reading.WallTime;

/** Forecasts from a file that somebody else writes. One that cannot be read is an error only once it stood so for a while: it may be half written. */
final class FileForecasts implements Source {
    /** How often the file is looked at, ms. */
    static final long EVERY_MS = 60_000;

    private static final Stamp NEVER_SEEN = new Stamp(-1, -1);

    /** What tells a file from a changed one. */
    private record Stamp(long modifiedMs, long bytes) {}

    private final Path file;
    private final Shelf shelf;
    private Stamp taken = NEVER_SEEN;
    private Stamp faulty = NEVER_SEEN;
    private boolean missing;

    FileForecasts(Path file, Supplier<WallTime> wall) {
        this.file = file;
        shelf = new Shelf(name(), wall);
    }

    @Override
    public String name() {
        return "the file " + file;
    }

    @Override
    public Due first(long nowMs) {
        return new Due(nowMs, nowMs);
    }

    @Override
    public Due attempt(long nowMs) {
        if (shelf.knowsTime()) {
            look();
        }
        return new Due(nowMs, nowMs + EVERY_MS);
    }

    private void look() {
        Stamp stamp = NEVER_SEEN;
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            stamp = new Stamp(now.lastModifiedTime().toMillis(), now.size());
            missing = false;
            if (!stamp.equals(taken)) {
                take(now);
                taken = stamp;
            }
        } catch (NoSuchFileException e) {
            absent();
        } catch (IOException e) {
            failed(
                    stamp,
                    "It cannot be read: " + e
                            + ". Look at its owner and rights; the service may not look under /home.");
        } catch (Unreadable e) {
            failed(stamp, "What stands in it is no forecast: " + e.why() + ".");
        }
    }

    private void take(BasicFileAttributes now) throws IOException, Unreadable {
        if (!now.isRegularFile()) { // a pipe would hold us up for ever
            throw new IOException("it is no ordinary file");
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(Plausible.MOST_BYTES + 1);
        }
        long modifiedS = Math.floorDiv(now.lastModifiedTime().toMillis(), 1000L);
        shelf.put(FileText.read(bytes, name(), modifiedS));
    }

    /** The second look at the same file tells: nobody is writing it any more. */
    private void failed(Stamp stamp, String why) {
        if (stamp.equals(faulty)) {
            shelf.hinder(why, true);
        }
        faulty = stamp;
    }

    private void absent() {
        if (missing) {
            shelf.hinder("It is not there. Put it there, or name another in [forecast].", true);
        }
        missing = true;
    }

    @Override
    public Optional<Forecast> newest() {
        return shelf.newest();
    }

    @Override
    public Optional<String> trouble() {
        return shelf.trouble();
    }
}
