package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rimeward.core.outlook.OutsideAir.Seen;

/** The nights outside as the own sensor saw them: what a night is predicted from when no forecast comes. Immutable. */
public final class NightDiary {
    /** Older nights are forgotten: by then the season is another. Own choice. */
    public static final int MOST_NIGHTS = 60;

    public static final NightDiary EMPTY = new NightDiary(List.of(), null);

    private final List<KnownNight> nights;
    private final @Nullable OpenNight open;

    NightDiary(List<KnownNight> nights, @Nullable OpenNight open) {
        this.nights = List.copyOf(nights.subList(Math.max(0, nights.size() - MOST_NIGHTS), nights.size()));
        this.open = open;
    }

    /** The nights that are over, the newest last. */
    public List<KnownNight> nights() {
        return nights;
    }

    /** This evening's air, where it is night and it was seen. */
    public OutsideAir evening(long epochS, SunTimes sun) {
        return open != null && open.noonEpochS() == sun.noonBefore(epochS) ? open.evening() : OutsideAir.UNSEEN;
    }

    /** With one more look at the sensor, every few minutes or so. What is older than the last look is left out: a clock was set. */
    public NightDiary after(Seen air, SunTimes sun) {
        long noonEpochS = sun.noonBefore(air.epochS());
        if (open == null) {
            return new NightDiary(nights, OpenNight.begunWith(air, noonEpochS));
        }
        if (air.epochS() < open.lastEpochS()) {
            return this;
        }
        if (noonEpochS == open.noonEpochS()) {
            return new NightDiary(nights, open.with(air, sun.night(air.epochS())));
        }
        Optional<KnownNight> closed = open.closed(sun.noonAfter(open.noonEpochS()));
        List<KnownNight> all = new ArrayList<>(nights);
        closed.ifPresent(all::add);
        return new NightDiary(all, OpenNight.begunWith(air, noonEpochS));
    }

    /** A few lines of plain text; {@link #parse} reads them back. */
    public String toText() {
        return DiaryText.write(nights, open);
    }

    /** @throws IllegalArgumentException if it is not what {@link #toText} writes */
    public static NightDiary parse(String text) {
        return DiaryText.read(text);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof NightDiary diary && toText().equals(diary.toText());
    }

    @Override
    public int hashCode() {
        return nights.hashCode();
    }
}
