package rimeward.core.tunnel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * A {@link LossWatch} as lines: its version, the tunnel as it was learned, what was usual, what is usual now, the night it changed and the
 * newest night, then one line for each open night.
 */
final class LossText {
    private static final String FIRST = "heat-loss 1";
    private static final String NONE = "-";
    private static final int HEAD = 5;

    private LossText() {}

    static String write(GreyBox.@Nullable Numbers learned, @Nullable LossTrack track) {
        if (learned == null || track == null) {
            return FIRST + '\n';
        }
        StringBuilder out = new StringBuilder(FIRST).append('\n');
        out.append(BoxText.write(learned)).append('\n');
        out.append(level(track.usual())).append('\n');
        out.append(level(track.now())).append('\n');
        OptionalLong changed = track.changedEpochS();
        out.append((changed.isPresent() ? "" + changed.getAsLong() : NONE) + " " + track.lastEpochS())
                .append('\n');
        for (LossNight night : track.open()) {
            out.append(night.epochS() + " " + number(night.logFactor()) + " " + number(night.standardError()))
                    .append('\n');
        }
        return out.toString();
    }

    private static String level(LossLevel level) {
        return number(level.mean()) + " " + number(level.nights()) + " " + number(level.spread());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    static LossWatch read(String text) {
        List<String> lines = text.lines().toList();
        if (lines.equals(List.of(FIRST))) {
            return LossWatch.NEW;
        }
        if (lines.size() < HEAD || !lines.get(0).equals(FIRST)) {
            throw new IllegalArgumentException("a watch over heat loss begins with \"" + FIRST + "\"");
        }
        String[] moments = words(lines.get(4), 2);
        List<LossNight> open = new ArrayList<>();
        for (String line : lines.subList(HEAD, lines.size())) {
            String[] words = words(line, 3);
            open.add(new LossNight(Long.parseLong(words[0]), finite(words[1]), finite(words[2])));
        }
        OptionalLong changed =
                moments[0].equals(NONE) ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(moments[0]));
        return new LossWatch(
                BoxText.read(lines.get(1)),
                new LossTrack(
                        readLevel(lines.get(2)), readLevel(lines.get(3)), changed, open, Long.parseLong(moments[1])));
    }

    private static LossLevel readLevel(String line) {
        String[] words = words(line, 3);
        return new LossLevel(finite(words[0]), finite(words[1]), finite(words[2]));
    }

    private static String[] words(String line, int count) {
        String[] words = line.split(" ", -1);
        if (words.length != count) {
            throw new IllegalArgumentException("\"" + line + "\" is no line of a watch over heat loss");
        }
        return words;
    }

    private static double finite(String word) {
        double value = Double.parseDouble(word);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("\"" + word + "\" is no number of a watch over heat loss");
        }
        return value;
    }
}
