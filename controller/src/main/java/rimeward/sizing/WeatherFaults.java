package rimeward.sizing;

import java.util.ArrayList;
import java.util.List;

/** What is wrong with a weather file: the first few in full, the rest counted. */
final class WeatherFaults {
    private static final int TOLD = 5;

    private final List<String> told = new ArrayList<>();
    private int more;

    void add(String sentence) {
        if (told.size() < TOLD) {
            told.add(sentence);
        } else {
            more++;
        }
    }

    void throwIfAny() throws Refused {
        if (told.isEmpty()) {
            return;
        }
        List<String> all = new ArrayList<>(told);
        if (more > 0) {
            all.add("and " + more + " more lines like these");
        }
        throw new Refused(all);
    }
}
