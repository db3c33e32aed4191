package rimeward.core.tunnel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The nights of a tunnel whose loss is known, one after another. Nights join the level that they are compared with only once both sums have
 * come back to nothing, so that a change is never learned away.
 *
 * @param usual what was usual before anything changed
 * @param now what is usual since; the same where nothing changed
 * @param changedEpochS the night since which it is another, s since 1970 UTC; absent while nothing that matters has changed
 * @param open nights that are not yet known to belong to {@code now}, the oldest first
 * @param lastEpochS the newest night's
 */
record LossTrack(LossLevel usual, LossLevel now, OptionalLong changedEpochS, List<LossNight> open, long lastEpochS) {
    /** Nights that after so long have changed nothing join the level, nights. Own choice. */
    private static final int MOST_OPEN = 30;

    /** After so many nights a change is taken as the tunnel's new usual. Own choice: three weeks, in which somebody has looked. */
    private static final int TAKEN_AFTER = 21;

    /** A smaller change is not told, as a logarithm. Own choice: 7 %, half of what is looked for. */
    private static final double LEAST_TOLD = LossSums.SOUGHT / 2;

    /** Of 95 %, two-sided. */
    private static final double Z95 = 1.959964;

    /** Variance of a mean of nights beside that of independent ones: wind and cloud last for days. Own choice, from {@code LossBench}. */
    private static final double ALIKE = 2;

    LossTrack {
        open = List.copyOf(open);
    }

    static LossTrack begun(List<LossNight> nights) {
        LossLevel level = LossLevel.of(nights);
        return new LossTrack(
                level,
                level,
                OptionalLong.empty(),
                List.of(),
                nights.get(nights.size() - 1).epochS());
    }

    /** One night later. */
    LossTrack after(LossNight night) {
        List<LossNight> all = new ArrayList<>(open);
        all.add(night);
        LossSums sums = LossSums.over(all, now);
        if (sums.hasChanged()) {
            return changed(all.subList(sums.changedAt(), all.size()), night.epochS());
        }
        int settled = StrictMath.max(sums.settled(), all.size() - MOST_OPEN);
        LossTrack next = joined(all.subList(0, settled), all.subList(settled, all.size()), night.epochS());
        return next.isOldNews() ? next.taken() : next;
    }

    private LossTrack changed(List<LossNight> since, long epochS) {
        LossLevel level = LossLevel.of(since, now.spread());
        boolean matters = StrictMath.abs(level.mean() - usual.mean()) >= LEAST_TOLD;
        OptionalLong from = matters ? OptionalLong.of(since.get(0).epochS()) : OptionalLong.empty();
        return new LossTrack(usual, level, from, List.of(), epochS);
    }

    private LossTrack joined(List<LossNight> nights, List<LossNight> left, long epochS) {
        LossLevel level = now;
        LossLevel before = usual;
        for (LossNight night : nights) {
            level = level.after(night);
            before = changedEpochS.isPresent() ? before : before.after(night);
        }
        return new LossTrack(before, level, changedEpochS, left, epochS);
    }

    private boolean isOldNews() {
        return changedEpochS.isPresent()
                && lastEpochS - changedEpochS.getAsLong() >= TAKEN_AFTER * 96L * Stretch.QUARTER_S;
    }

    /** What is now, is usual. */
    LossTrack taken() {
        return new LossTrack(now, now, OptionalLong.empty(), open, lastEpochS);
    }

    /** What changed, while it stands and is new. */
    Optional<LossChange> change() {
        if (changedEpochS.isEmpty()) {
            return Optional.empty();
        }
        double log = now.mean() - usual.mean();
        double variance =
                now.spread() * now.spread() * ALIKE * (1 / now.nights() + 1 / StrictMath.max(1, usual.nights()));
        double apart = Z95 * StrictMath.sqrt(variance);
        return Optional.of(
                new LossChange(changedEpochS.getAsLong(), percent(log), percent(log - apart), percent(log + apart)));
    }

    private static double percent(double log) {
        return 100 * (StrictMath.exp(log) - 1);
    }
}
