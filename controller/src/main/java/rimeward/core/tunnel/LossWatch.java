package rimeward.core.tunnel;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Looks, night by night, for a tunnel that has come to lose more or less heat than it did: a cover that slipped, a gap at the door. It takes
 * some nights to see what {@code alert.CoverWatch} cannot, because wind and cloud hide it from one night. Immutable.
 *
 * <p>The first tunnel that is learned stays what nights are measured by. What a daily fit makes of the newest weeks is never looked at again:
 * a change would soon be part of it and be gone. What is usual beside that first tunnel drifts with the season; see {@link LossTrack}.
 */
public final class LossWatch {
    /** Fewer nights do not say what is usual. Own choice. */
    public static final int LEAST_NIGHTS = 10;

    /** After so long without a night that tells, what was usual is forgotten, s. Own choice: a summer. */
    private static final long FORGOTTEN_AFTER_S = 60 * 86_400L;

    /** Nobody has looked yet. */
    public static final LossWatch NEW = new LossWatch(null, null);

    private final GreyBox.@Nullable Numbers learned;
    private final @Nullable LossTrack track;

    LossWatch(GreyBox.@Nullable Numbers learned, @Nullable LossTrack track) {
        this.learned = learned;
        this.track = track;
    }

    /**
     * With the nights that were not looked at before. Call it once a day or as you like; a night that is still going on waits.
     *
     * @param lesson what the same stretches teach; only the first tunnel that is learned counts
     * @param seen the last weeks, the oldest first
     */
    public LossWatch after(Lesson lesson, List<Stretch> seen) {
        if (learned == null || track == null) {
            return begun(lesson, seen);
        }
        List<LossNight> nights = new LossNights(learned).after(track.lastEpochS(), seen);
        if (!nights.isEmpty() && nights.get(0).epochS() - track.lastEpochS() > FORGOTTEN_AFTER_S) {
            return begun(lesson, seen);
        }
        LossTrack next = track;
        for (LossNight night : nights) {
            next = next.after(night);
        }
        return new LossWatch(learned, next);
    }

    private static LossWatch begun(Lesson lesson, List<Stretch> seen) {
        if (!(lesson instanceof Lesson.Learned now)) {
            return NEW;
        }
        GreyBox.Numbers numbers = now.box().numbers();
        List<LossNight> nights = new LossNights(numbers).after(Long.MIN_VALUE, seen);
        return nights.size() < LEAST_NIGHTS ? NEW : new LossWatch(numbers, LossTrack.begun(nights));
    }

    /** Somebody says that it is to be so: what is now, is usual. */
    public LossWatch accepted() {
        return track == null ? this : new LossWatch(learned, track.taken());
    }

    public LossStanding standing() {
        if (track == null) {
            return LossStanding.UNKNOWN;
        }
        Optional<LossChange> change = track.change();
        return change.isPresent() ? new LossStanding.Changed(change.get()) : new LossStanding.Usual();
    }

    /** A few lines of plain text; {@link #parse} reads them back. */
    public String toText() {
        return LossText.write(learned, track);
    }

    /** @throws IllegalArgumentException if it is not what {@link #toText} writes */
    public static LossWatch parse(String text) {
        return LossText.read(text);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LossWatch watch && toText().equals(watch.toText());
    }

    @Override
    public int hashCode() {
        return toText().hashCode();
    }
}
