package rimeward.broker;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;

/** A stock {@code mosquitto_sub}, and what it has printed. It ends with its broker. */
final class Subscriber implements AutoCloseable {
    private final List<String> lines = new CopyOnWriteArrayList<>();
    private final Process process;

    Subscriber(List<String> command) throws IOException {
        process = new ProcessBuilder(command).redirectErrorStream(true).start();
        Thread reader = new Thread(this::read, "subscriber");
        reader.setDaemon(true);
        reader.start();
    }

    private void read() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8))) {
            in.lines().forEach(lines::add);
        } catch (IOException | UncheckedIOException e) {
            lines.add("ended: " + e);
        }
    }

    /** Everything so far. */
    List<String> lines() {
        return lines;
    }

    /** What came while it listened, without what the broker had kept, and without what tells the topic. */
    List<String> texts(String topicPart) {
        return lines.stream()
                .filter(line -> line.startsWith("0 ") && line.contains(topicPart))
                .map(line -> line.substring(line.indexOf(' ', 2) + 1))
                .toList();
    }

    /** What each topic last said, old or new; without those that were deleted. */
    Map<String, String> newest() {
        Map<String, String> found = new TreeMap<>();
        for (String line : lines) {
            String[] parts = line.split(" ", 3);
            if (parts[2].isEmpty()) {
                found.remove(parts[1]);
            } else {
                found.put(parts[1], parts[2]);
            }
        }
        return found;
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
