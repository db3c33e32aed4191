package rimeward.adapter.config;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * The tables and values of a TOML file, or of several laid over each other, each remembering its file and line. Immutable. To get
 * values out, open a {@link Faults#reader}.
 */
public final class TomlTree {
    private final Node.Branch root;

    TomlTree(Node.Branch root) {
        this.root = root;
    }

    Node.Branch root() {
        return root;
    }

    /**
     * Reads a UTF-8 file.
     *
     * @throws BadSettings if it is not there, cannot be read or is not TOML
     */
    public static TomlTree read(Path file) {
        try {
            return parse(file.toString(), Files.readString(file));
        } catch (NoSuchFileException e) {
            throw unreadable(file, "does not exist", "check the path, or copy the example from config/");
        } catch (CharacterCodingException e) {
            throw unreadable(file, "is not UTF-8 text", "save it as UTF-8");
        } catch (IOException e) {
            throw unreadable(
                    file, "cannot be read (" + e.getMessage() + ")", "check that it is a file and its permissions");
        }
    }

    /**
     * Reads a text.
     *
     * @param name what messages call it
     * @throws BadSettings if it is not TOML
     */
    public static TomlTree parse(String name, String text) {
        TomlParseResult parsed = Toml.parse(text);
        if (parsed.hasErrors()) {
            throw new BadSettings(parsed.errors().stream()
                    .map(error -> syntaxFault(name, error))
                    .toList());
        }
        return new TomlTree(branch(name, new Origin(name, 1), parsed));
    }

    /** This tree with {@code above} laid over it: tables key by key, anything else (arrays too) as a whole. */
    public TomlTree with(TomlTree above) {
        return new TomlTree(root.under(above.root));
    }

    private static Fault syntaxFault(String name, TomlParseError error) {
        TomlPosition at = error.position();
        return new Fault(
                new Origin(name, at.line()),
                "column " + at.column(),
                "is not TOML (" + error.getMessage() + ")",
                "write key = value, text in double quotes");
    }

    private static BadSettings unreadable(Path file, String problem, String remedy) {
        return new BadSettings(List.of(new Fault(new Origin(file.toString(), 1), "the file", problem, remedy)));
    }

    private static Node.Branch branch(String name, Origin origin, TomlTable table) {
        Map<String, Node> children = new LinkedHashMap<>();
        for (Map.Entry<String, Object> entry : table.entrySet()) {
            Origin at = origin(name, table.inputPositionOf(List.of(entry.getKey())), origin);
            children.put(entry.getKey(), node(name, at, entry.getValue()));
        }
        return new Node.Branch(origin, children);
    }

    private static Node node(String name, Origin origin, Object value) {
        if (value instanceof TomlTable table) {
            return branch(name, origin, table);
        }
        if (value instanceof TomlArray array) {
            List<Node> items = new ArrayList<>();
            for (int i = 0; i < array.size(); i++) {
                items.add(node(name, origin(name, array.inputPositionOf(i), origin), array.get(i)));
            }
            return new Node.Row(origin, items);
        }
        return new Node.Leaf(origin, value);
    }

    private static Origin origin(String name, @Nullable TomlPosition at, Origin otherwise) {
        return at == null ? otherwise : new Origin(name, at.line());
    }
}
