package rimeward.sim.sweep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import rimeward.sim.scenario.BadInput;

/**
 * Runs winters on all cores and writes each result as soon as those before it are written, so that the file is the same whatever the
 * number of threads. What is there already is not run again.
 */
public final class Sweep implements AutoCloseable {
    private final Plan plan;
    private final WinterRun run;
    private final Path scratch;

    /** @throws BadInput if there is no room for files in between */
    public Sweep(Plan plan, WeatherMaker weather) throws BadInput {
        this.plan = plan;
        try {
            scratch = Files.createTempDirectory("rimeward-sweep-");
        } catch (IOException e) {
            throw new BadInput("cannot make a temporary folder (" + e + "); is the disk full?", e);
        }
        run = new WinterRun(new WinterMaker(weather, plan.days()), scratch);
    }

    /** Who looks on. */
    public interface Onlooker {
        /** One more winter is written. */
        void done(WinterLine winter, int number, int of);
    }

    /**
     * Runs what is missing, and gives all winters of the plan that the file holds.
     *
     * @throws BadInput if the file or the disk cannot be used; what was written stays
     */
    public List<WinterLine> run(Path file, int threads, Onlooker onlooker) throws BadInput {
        ResultsFile results = ResultsFile.open(file, plan);
        List<Long> all = plan.seeds();
        List<Long> missing = all.stream().filter(seed -> !results.has(seed)).toList();
        ExecutorService pool = Executors.newFixedThreadPool(threads, Sweep::quietly);
        try {
            List<Future<WinterLine>> running = new ArrayList<>();
            for (long seed : missing) {
                running.add(pool.submit(() -> run.line(seed)));
            }
            int number = all.size() - missing.size();
            for (Future<WinterLine> each : running) {
                WinterLine winter = taken(each);
                results.append(winter);
                onlooker.done(winter, ++number, all.size());
            }
        } finally {
            pool.shutdownNow();
        }
        Set<Long> planned = new TreeSet<>(all);
        return results.winters().stream()
                .filter(winter -> planned.contains(winter.seed()))
                .toList();
    }

    /** A winter of this plan that failed, made as small as it still fails, in a folder of its own. */
    public Path shrunk(WinterLine failed, Path folder) throws BadInput {
        return new Shrink(run.set(failed.seed()), failed.broken().get(0).code(), scratch).into(folder);
    }

    /** Clears away what was needed in between. */
    @Override
    public void close() {
        try (Stream<Path> all = Files.walk(scratch)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException | UncheckedIOException e) {
            scratch.toFile().deleteOnExit(); // nothing depends on it
        }
    }

    /** A pool must not keep the program alive. */
    private static Thread quietly(Runnable work) {
        Thread thread = new Thread(work, "winter");
        thread.setDaemon(true);
        return thread;
    }

    private static WinterLine taken(Future<WinterLine> running) throws BadInput {
        try {
            return running.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new BadInput("stopped; the same command goes on where this one was", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof BadInput bad) {
                throw bad;
            }
            throw new IllegalStateException("a winter could not be run", e);
        }
    }
}
