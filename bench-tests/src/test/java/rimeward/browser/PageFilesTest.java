package rimeward.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules for the page's files, which no browser is needed for. */
final class PageFilesTest {
    private static final Path RESOURCES = Path.of("..", "controller", "src", "main", "resources", "rimeward");
    private static final Path PAGE = RESOURCES.resolve("adapter").resolve("web").resolve("page");

    static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(PAGE)) {
            return all.sorted().toList();
        }
    }

    /** What would let a sensor's name become markup or a script, or break the strict Content-Security-Policy. */
    @ParameterizedTest
    @MethodSource("files")
    void textNeverBecomesMarkup(Path file) throws IOException {
        assertThat(Files.readString(file))
                .doesNotContainPattern(
                        "innerHTML|outerHTML|insertAdjacentHTML|document\\.write|createContextualFragment|DOMParser|srcdoc")
                .doesNotContainPattern("\\beval\\b|new Function|setTimeout\\(\\s*[\"'`]|javascript:")
                .doesNotContainPattern("\\bstyle\\s*=|[\"']style[\"']|<style|\\son[a-z]+\\s*=\\s*[\"']");
    }

    @ParameterizedTest
    @MethodSource("files")
    void noOtherHostIsNamed(Path file) throws IOException {
        assertThat(Files.readString(file).replace("http://www.w3.org/2000/svg", ""))
                .doesNotContainPattern("https?://|//[a-z]+\\.");
    }

    /** So that all come in one round of requests. */
    @Test
    void eachFileIsNamedByTheFirst() throws IOException {
        String first = Files.readString(PAGE.resolve("index.html"));
        for (Path file : files()) {
            String name = file.getFileName().toString();
            assertThat(name.equals("index.html") || first.contains("\"/" + name + "\""))
                    .as(name)
                    .isTrue();
        }
    }

    /** The page and the report are one family: an ink that both know is the same in both, by day and by night. */
    @Test
    void inksAreThoseOfTheReport() throws IOException {
        String page = Files.readString(PAGE.resolve("page.css"));
        String strip = Files.readString(RESOURCES.resolve("strip").resolve("strip.css"));
        for (int paper : new int[] {0, 1}) {
            Map<String, String> ours = inks(page, paper);
            Map<String, String> theirs = inks(strip, paper);
            ours.keySet().retainAll(theirs.keySet());
            assertThat(ours).hasSizeGreaterThan(15);
            theirs.keySet().retainAll(ours.keySet());
            assertThat(ours).isEqualTo(theirs);
        }
    }

    /** Of the first block that sets inks, or the second. */
    private static Map<String, String> inks(String css, int block) {
        List<String> blocks = Pattern.compile(":root[^{]*\\{([^}]*)\\}")
                .matcher(css)
                .results()
                .map(found -> found.group(1))
                .toList();
        Map<String, String> inks = new LinkedHashMap<>();
        Matcher each = Pattern.compile("--([a-z-]+): (#[0-9a-f]+);").matcher(blocks.get(block));
        while (each.find()) {
            inks.put(each.group(1), each.group(2));
        }
        return inks;
    }
}
