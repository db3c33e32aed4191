package rimeward.sim.sweep;

import java.util.List;
import java.util.stream.LongStream;

/**
 * What a sweep is to run, and by which program. Results of other programs or lengths are no part of it.
 *
 * @param build version and commit of the program
 * @param days length of each winter
 * @param first seed
 * @param winters how many seeds, this one the first
 * @param shard which part of them, from 1
 * @param shards in how many parts they are run; each n-th seed belongs to a part
 */
public record Plan(String build, int days, long first, int winters, int shard, int shards) {
    private static final int MOST_DAYS = 90;
    private static final int MOST_WINTERS = 1_000_000;

    public Plan {
        require(days >= 2 && days <= MOST_DAYS, "a winter of " + days + " days; name 2 to " + MOST_DAYS);
        require(first >= 0 && first <= Integer.MAX_VALUE - MOST_WINTERS, "the first seed " + first + "; name 0 to 2e9");
        require(winters >= 1 && winters <= MOST_WINTERS, winters + " winters; name 1 to a million");
        require(shards >= 1 && shard >= 1 && shard <= shards, "part " + shard + " of " + shards);
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalArgumentException(what);
        }
    }

    /** In the order in which results are written. */
    List<Long> seeds() {
        return LongStream.range(first, first + winters)
                .filter(seed -> (seed - first) % shards == shard - 1)
                .boxed()
                .toList();
    }
}
