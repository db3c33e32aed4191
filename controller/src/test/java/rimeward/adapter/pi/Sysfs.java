package rimeward.adapter.pi;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder that stands in for {@code /}. */
record Sysfs(Path root) {
    Sysfs put(String file, String text) {
        try {
            Path path = root.resolve(file);
            Files.createDirectories(path.getParent());
            Files.writeString(path, text);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void remove(String file) {
        try {
            Files.delete(root.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
