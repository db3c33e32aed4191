package rimeward.adapter.config;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The documented example, {@code config/tunnel.toml}. */
final class Example {
    private Example() {}

    /** Its text with every table and key that stands in it as a comment brought to life. */
    static String live() throws IOException {
        String text = Files.readString(Path.of("..", "config", "tunnel.toml"));
        return text.replaceAll("(?m)^# (\\[[a-z_.]+]|[A-Za-z_]+ = (\"[^\"]*\"|\\S+))(?= *$| +#)", "$1");
    }
}
