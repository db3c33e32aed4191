package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rimeward.core.outlook.OutsideAir.Seen;

/** A {@link NightDiary} as lines: its version, the night that is going on, then one line a night. */
final class DiaryText {
    private static final String FIRST = "night-diary 1";
    private static final String NO_NIGHT = "-";

    private DiaryText() {}

    static String write(List<KnownNight> nights, @Nullable OpenNight open) {
        StringBuilder out = new StringBuilder(FIRST).append('\n');
        out.append(open == null ? NO_NIGHT : line(open)).append('\n');
        for (KnownNight night : nights) {
            out.append(evening(night.evening()) + " " + Words.of(night.lowestC()) + " " + Words.of(night.highestC()))
                    .append('\n');
        }
        return out.toString();
    }

    private static String line(OpenNight open) {
        return String.join(
                " ",
                "" + open.noonEpochS(),
                "" + open.lastEpochS(),
                "" + open.longestGapS(),
                evening(open.evening()),
                Words.of(open.lowestC()),
                Words.of(open.highestC()));
    }

    private static String evening(OutsideAir evening) {
        return evening instanceof Seen seen
                ? seen.epochS() + " " + Words.of(seen.airC()) + " " + Words.of(seen.dewPointC())
                : "- - -";
    }

    static NightDiary read(String text) {
        List<String> lines = text.lines().toList();
        if (lines.size() < 2 || !lines.get(0).equals(FIRST)) {
            throw new IllegalArgumentException("a diary of nights begins with \"" + FIRST + "\"");
        }
        List<KnownNight> nights = new ArrayList<>();
        for (String line : lines.subList(2, lines.size())) {
            Words words = new Words(line, 5);
            nights.add(new KnownNight(evening(words, 0), words.number(3), words.number(4)));
        }
        return new NightDiary(nights, lines.get(1).equals(NO_NIGHT) ? null : open(new Words(lines.get(1), 8)));
    }

    private static OpenNight open(Words words) {
        return new OpenNight(
                words.whole(0), evening(words, 3), words.number(6), words.number(7), words.whole(1), words.whole(2));
    }

    private static OutsideAir evening(Words words, int at) {
        return words.isKnown(at)
                ? new Seen(words.whole(at), words.number(at + 1), words.perhaps(at + 2))
                : OutsideAir.UNSEEN;
    }
}
