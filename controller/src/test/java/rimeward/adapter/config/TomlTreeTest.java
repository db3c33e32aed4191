package rimeward.adapter.config;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TomlTreeTest {

    @TempDir
    Path folder;

    @Test
    void missingFile() {
        Path file = folder.resolve("tunel.toml");
        assertThatThrownBy(() -> TomlTree.read(file))
                .isInstanceOf(BadSettings.class)
                .hasMessage(file + ":1: the file does not exist; check the path, or copy the example from config/");
    }

    @Test
    void folderInsteadOfAFile() {
        assertThatThrownBy(() -> TomlTree.read(folder))
                .isInstanceOf(BadSettings.class)
                .hasMessageContaining("cannot be read")
                .hasMessageContaining("check that it is a file and its permissions");
    }

    @Test
    void notUtf8() throws IOException {
        Path file = folder.resolve("tunnel.toml");
        Files.write(file, "name = \"Höhe\"".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> TomlTree.read(file))
                .hasMessage(file + ":1: the file is not UTF-8 text; save it as UTF-8");
    }

    @Test
    void syntaxFaultsAreToldTogether() {
        assertThatThrownBy(() -> TomlTree.parse("a.toml", "[a]\nx = \ny = 3\ny = 4\n"))
                .isInstanceOf(BadSettings.class)
                .hasMessageContaining("a.toml:2: column 5 is not TOML (")
                .hasMessageContaining("a.toml:4: column 1 is not TOML (y previously defined at line 3, column 1)");
    }
}
