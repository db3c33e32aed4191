package rimeward.adapter.pi;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looking for what the kernel numbers as it likes. Looked for anew at each read: after a replug the number may be another. */
final class Folders {
    private Folders() {}

    /** What a folder holds, in order of name; nothing where it is absent or closed to us. */
    static List<Path> in(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    static Optional<Path> starting(Path folder, String prefix) {
        return in(folder).stream()
                .filter(entry -> entry.getFileName().toString().startsWith(prefix))
                .findFirst();
    }

    /** The folder whose file {@code name} says this. */
    static Optional<Path> named(Path folder, String name) {
        return in(folder).stream()
                .filter(entry -> line(entry.resolve("name")).equals(name))
                .findFirst();
    }

    /** A file's text; empty where it cannot be read. */
    static String line(Path file) {
        try {
            return Files.readString(file, StandardCharsets.US_ASCII).strip();
        } catch (IOException e) {
            return "";
        }
    }
}
