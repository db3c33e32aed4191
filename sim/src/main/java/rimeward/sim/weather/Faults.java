package rimeward.sim.weather;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers what is wrong with one file, so that its owner hears everything at once (but not the same thing ten thousand
 * times).
 */
final class Faults {
    private static final int TOLD = 20;

    private final Path file;
    private final List<String> sentences = new ArrayList<>();
    private int more;

    Faults(Path file) {
        this.file = file;
    }

    void add(String sentence) {
        if (sentences.size() < TOLD) {
            sentences.add(file + ": " + sentence);
        } else {
            more++;
        }
    }

    void add(int line, String sentence) {
        add("line " + line + ", " + sentence);
    }

    List<String> sentences() {
        var all = new ArrayList<>(sentences);
        if (more > 0) {
            all.add(file + ": and " + more + " more faults");
        }
        return all;
    }

    void throwIfAny() throws WeatherFileException {
        if (!sentences.isEmpty()) {
            throw new WeatherFileException(sentences());
        }
    }
}
