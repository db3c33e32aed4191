package rimeward.fitting;

import java.util.List;
import java.util.Locale;

/** The marks of a dial in degrees: the middle one of what was seen. */
public final class DialTable {
    private DialTable() {}

    /** For the terminal. */
    public static String of(List<Mark> marks) {
        StringBuilder text = new StringBuilder();
        text.append(String.format(Locale.ROOT, "%-12s  %8s  %8s  %6s  %s\n", "mark", "on", "off", "swings", "seen"));
        for (Mark mark : marks) {
            text.append(String.format(
                    Locale.ROOT,
                    "%-12s  %8s  %8s  %6d  %s%s\n",
                    mark.name(),
                    celsius(mark.onC()),
                    celsius(mark.offC()),
                    mark.swings(),
                    mark.how(),
                    mark.ending().isEmpty() ? "" : "; " + mark.ending()));
        }
        return text.toString();
    }

    /** With units in the header. */
    public static String csv(List<Mark> marks) {
        StringBuilder text = new StringBuilder("mark,on_C,off_C,times_on,times_off,seen,ended\n");
        for (Mark mark : marks) {
            text.append(String.join(
                            ",",
                            quoted(mark.name()),
                            number(mark.onC()),
                            number(mark.offC()),
                            String.valueOf(mark.onC().size()),
                            String.valueOf(mark.offC().size()),
                            quoted(mark.how()),
                            quoted(mark.ending())))
                    .append('\n');
        }
        return text.toString();
    }

    private static String celsius(List<Double> seenC) {
        return seenC.isEmpty() ? "not seen" : number(seenC) + " °C";
    }

    /** The median with one decimal; empty where nothing was seen. */
    private static String number(List<Double> seenC) {
        if (seenC.isEmpty()) {
            return "";
        }
        List<Double> sorted = seenC.stream().sorted().toList();
        int half = sorted.size() / 2;
        double median = sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
        return String.format(Locale.ROOT, "%.1f", median);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
