package rimeward.sim.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.json.JsonText;
import rimeward.json.NoJson;
import rimeward.sim.scenario.BadInput;

/**
 * The results of a sweep: a first line that says by which program and how long the winters are, then one line of JSON for each. It only
 * grows, so that a sweep that was stopped goes on where it was; a last line that was cut off is dropped.
 */
public final class ResultsFile {
    private final Path file;
    private final String head;
    private final TreeMap<Long, String> lines = new TreeMap<>();

    private ResultsFile(Path file, String head) {
        this.file = file;
        this.head = head;
    }

    /** Begins one, or goes on with what is there. */
    static ResultsFile open(Path file, Plan plan) throws BadInput {
        ResultsFile results = new ResultsFile(file, head(plan));
        try {
            if (!Files.exists(file)) {
                Files.createDirectories(file.toAbsolutePath().getParent());
                Files.writeString(file, results.head + '\n');
                return results;
            }
            String text = Files.readString(file);
            String whole = text.substring(0, text.lastIndexOf('\n') + 1);
            results.take(whole);
            if (whole.length() < text.length()) {
                Files.writeString(file, whole);
            }
            return results;
        } catch (IOException e) {
            throw new BadInput("the results " + file + " cannot be used (" + e + "); name another with --out", e);
        }
    }

    /** Several files together: winters in the order of their seeds. */
    public record Merged(String build, int days, List<WinterLine> winters) {}

    /** Puts files together that were written by the same program. */
    public static Merged merged(List<Path> files) throws BadInput {
        List<ResultsFile> all = new ArrayList<>();
        for (Path file : files) {
            try {
                String text = Files.readString(file);
                ResultsFile one = new ResultsFile(file, text.lines().findFirst().orElse(""));
                one.take(text.substring(0, text.lastIndexOf('\n') + 1));
                all.add(one);
            } catch (IOException e) {
                throw new BadInput("the results " + file + " cannot be read (" + e + "); check the path", e);
            }
        }
        ResultsFile sum = new ResultsFile(all.get(0).file, all.get(0).head);
        for (ResultsFile one : all) {
            sum.requireHead(one.head, one.file);
            for (Map.Entry<Long, String> line : one.lines.entrySet()) {
                sum.put(line.getKey(), line.getValue(), one.file);
            }
        }
        List<WinterLine> winters = sum.winters();
        if (winters.isEmpty()) {
            throw new BadInput("there is no winter in " + files + "; run a sweep first");
        }
        return merged(sum.head, winters);
    }

    private static Merged merged(String head, List<WinterLine> winters) throws BadInput {
        try {
            Json said = JsonReader.read(head);
            String build = said.get("build").orElse(said) instanceof Json.Text text ? text.text() : "?";
            int days = said.get("days").orElse(said) instanceof Json.Figure figure ? (int) figure.value() : 0;
            return new Merged(build, days, winters);
        } catch (NoJson e) {
            throw new BadInput("the first line of the results cannot be read: " + e.why(), e);
        }
    }

    private static String head(Plan plan) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("sweep", "rimeward");
        members.put("build", plan.build());
        members.put("days", plan.days());
        return JsonText.of(members);
    }

    private void take(String text) throws BadInput {
        List<String> found = text.lines().toList();
        requireHead(found.isEmpty() ? "" : found.get(0), file);
        for (String line : found.subList(Math.min(1, found.size()), found.size())) {
            put(LineText.read(line).seed(), line, file);
        }
    }

    private void requireHead(String other, Path from) throws BadInput {
        if (!other.equals(head) || !head.startsWith("{\"sweep\":\"rimeward\"")) {
            throw new BadInput("the results " + from + " begin with " + (other.isEmpty() ? "nothing" : other)
                    + ", not with " + head + ": they come from another program or have winters of another length; name"
                    + " another place with --out, or remove them");
        }
    }

    private void put(long seed, String line, Path from) throws BadInput {
        String before = lines.put(seed, line);
        if (before != null && !before.equals(line)) {
            throw new BadInput("the winter of seed " + seed + " in " + from
                    + " differs from the same one elsewhere, and the same seed must give the same; tell us");
        }
    }

    boolean has(long seed) {
        return lines.containsKey(seed);
    }

    /** One more winter, at the end of the file. */
    void append(WinterLine winter) throws BadInput {
        String line = LineText.of(winter);
        put(winter.seed(), line, file);
        try {
            Files.writeString(file, line + '\n', StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new BadInput("cannot write the results " + file + " (" + e + "); is the disk full?", e);
        }
    }

    /** In the order of their seeds, as numbers are written. */
    List<WinterLine> winters() throws BadInput {
        List<WinterLine> winters = new ArrayList<>();
        for (String line : lines.values()) {
            winters.add(LineText.read(line));
        }
        return winters;
    }
}
