package rimeward.map.planted.core.outlook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Fault: pure code that reaches a file. */
public final class WritesFile {
    public void write(Path file) throws IOException {
        Files.writeString(file, "");
    }
}
