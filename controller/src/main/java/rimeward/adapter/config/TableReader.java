package rimeward.adapter.config;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads one table of settings and gathers its faults instead of stopping at the first. For one thread.
 *
 * <p>Ask for every key the table may have; what nobody asked for is an unknown key. After a fault the getters hand out a stand-in so
 * that reading goes on; build results only through {@link #whenSound}, which sees to it that no stand-in gets into one.
 *
 * <pre>{@code
 * var faults = new Faults();
 * var top = faults.reader(TomlTree.read(file));
 * var fan = top.table("fan");
 * double ratedW = fan.get("rated_W", Kinds.number(1, 500));
 * Optional<Fan> read = fan.whenSound(() -> new Fan(ratedW));
 * faults.throwIfAny();
 * return read.orElseThrow();
 * }</pre>
 */
public final class TableReader {
    private final String path;
    private final Node.Branch table;
    private final Faults faults;
    private final KeyUse keys;
    private final List<TableReader> inner = new ArrayList<>();
    private boolean sound = true;

    private TableReader(String path, Node.Branch table, Faults faults) {
        this.path = path;
        this.table = table;
        this.faults = faults;
        keys = new KeyUse(table.children().keySet());
    }

    static TableReader top(Node.Branch root, Faults faults) {
        return new TableReader("", root, faults);
    }

    /** Whether the table has this key; makes it a known one. */
    public boolean has(String key) {
        return keys.ask(key);
    }

    /** The value of a key that must be there. */
    public <T> T get(String key, Kind<T> kind) {
        Optional<Node> node = required(key, kind.expected());
        return node.isPresent() ? read(label(key), node.get(), kind) : kind.standIn();
    }

    /** The value of a key that may be left out. */
    public <T> T get(String key, Kind<T> kind, T otherwise) {
        return has(key) ? get(key, kind) : otherwise;
    }

    /** The value of a key that may be left out and has no default. */
    public <T> Optional<T> find(String key, Kind<T> kind) {
        return has(key) ? Optional.of(get(key, kind)) : Optional.empty();
    }

    /** A temperature in °C under {@code stem_C}, or in °F under {@code stem_F}; limits in °C. */
    public double celsius(String stem, double leastC, double mostC) {
        String keyC = stem + "_C";
        String keyF = stem + "_F";
        boolean inC = has(keyC);
        boolean inF = has(keyF);
        if (inC && inF) {
            fault(keyF, "says the same as " + keyC, "keep one of the two");
        }
        return inF && !inC ? get(keyF, Kinds.fahrenheit(leastC, mostC)) : get(keyC, Kinds.number(leastC, mostC));
    }

    /** The same, for a temperature that may be left out. */
    public double celsius(String stem, double leastC, double mostC, double otherwiseC) {
        boolean inC = has(stem + "_C");
        boolean inF = has(stem + "_F");
        return inC || inF ? celsius(stem, leastC, mostC) : otherwiseC;
    }

    /** An array of values that must be there; each is read and blamed on its own. */
    public <T> List<T> list(String key, Kind<T> kind) {
        Optional<Node> node = required(key, "a list: [ … ], each " + kind.expected());
        if (node.isEmpty()) {
            return List.of();
        }
        if (!(node.get() instanceof Node.Row row)) {
            fault(key, "must be a list", "put it in square brackets");
            return List.of();
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < row.items().size(); i++) {
            values.add(read(label(key) + "[" + (i + 1) + "]", row.items().get(i), kind));
        }
        return values;
    }

    /** A table that must be there. */
    public TableReader table(String key) {
        Optional<Node> node = required(key, "a table, [" + label(key) + "]");
        if (node.isPresent() && node.get() instanceof Node.Branch branch) {
            return open(label(key), branch);
        }
        node.ifPresent(other -> notATable(key));
        return silent();
    }

    /** A table that may be left out; {@code key = "none"} says so too, and lets an overlay take a table away. */
    public Optional<TableReader> findTable(String key) {
        if (!has(key)) {
            return Optional.empty();
        }
        Node node = table.children().get(key);
        if (node instanceof Node.Branch branch) {
            return Optional.of(open(label(key), branch));
        }
        if (node instanceof Node.Leaf leaf && leaf.value().equals("none")) {
            return Optional.empty();
        }
        notATable(key);
        return Optional.empty();
    }

    /** A table that may be left out because each of its keys may. */
    public TableReader optionalTable(String key) {
        return findTable(key).orElseGet(() -> open(label(key), new Node.Branch(table.origin(), Map.of())));
    }

    /** The tables of an array of tables; none if the key is left out. They are counted from 1 in messages. */
    public List<TableReader> tables(String key) {
        if (!has(key)) {
            return List.of();
        }
        List<TableReader> readers = new ArrayList<>();
        if (table.children().get(key) instanceof Node.Row row) {
            for (Node item : row.items()) {
                if (item instanceof Node.Branch branch) {
                    readers.add(open(label(key) + "[" + (readers.size() + 1) + "]", branch));
                }
            }
            if (readers.size() == row.items().size()) {
                return readers;
            }
        }
        fault(key, "must be tables", "write [[" + label(key) + "]] above each");
        return List.of();
    }

    /** The same, of which there must be at least one. */
    public List<TableReader> someTables(String key, String why) {
        if (required(key, "one or more [[" + label(key) + "]]; " + why).isEmpty()) {
            return List.of();
        }
        return tables(key);
    }

    /** A table taken out unread, to be laid over another file's tree. */
    public Optional<TomlTree> subtree(String key) {
        return findTable(key).map(reader -> {
            inner.remove(reader); // whoever reads the merged tree asks for its keys
            return new TomlTree(reader.table);
        });
    }

    /** Adds a fault of a key that was read; it is shown with the value it has. */
    public void fault(String key, String problem, String remedy) {
        Node node = table.children().get(key);
        String value = node instanceof Node.Leaf leaf ? " = " + Shown.value(leaf.value()) : "";
        add(new Fault(node == null ? table.origin() : node.origin(), label(key) + value, problem, remedy));
    }

    /** The same for a key whose value nobody may read. */
    void faultOfSecret(String key, String problem, String remedy) {
        Node node = table.children().get(key);
        add(new Fault(node == null ? table.origin() : node.origin(), label(key), problem, remedy));
    }

    /**
     * Builds a result, if this table and those opened from it are without fault. What the constructor itself refuses becomes a fault
     * of this table.
     */
    public <T> Optional<T> whenSound(Supplier<T> build) {
        if (!isSound()) {
            return Optional.empty();
        }
        try {
            return Optional.of(build.get());
        } catch (IllegalArgumentException e) {
            String name = path.isEmpty() ? "the file" : "[" + path + "]";
            add(new Fault(table.origin(), name, "is refused: " + e.getMessage(), "change what it names"));
            return Optional.empty();
        }
    }

    /** Whether no fault was found so far in this table and those opened from it. */
    public boolean isSound() {
        return sound && inner.stream().allMatch(TableReader::isSound);
    }

    /** Tells of keys that are missing or that nobody asked for; a misspelt key is both, and is told once. */
    void finish() {
        keys.unknown().forEach((key, remedy) -> {
            boolean single = table.children().get(key) instanceof Node.Leaf;
            fault(key, "is not a known " + (single ? "key" : "table"), remedy);
        });
        keys.missing().forEach((key, expected) -> fault(key, "is missing", "add it: " + expected));
        inner.forEach(TableReader::finish);
    }

    private <T> T read(String label, Node node, Kind<T> kind) {
        try {
            if (node instanceof Node.Leaf leaf) {
                return kind.reading().read(leaf.value());
            }
            add(new Fault(node.origin(), label, "must be " + kind.expected(), "give a single value"));
        } catch (Misread e) {
            String value = Shown.value(((Node.Leaf) node).value());
            add(new Fault(node.origin(), label + " = " + value, e.problem(), e.remedy()));
        }
        return kind.standIn();
    }

    private Optional<Node> required(String key, String expected) {
        Optional<Node> node = Optional.ofNullable(table.children().get(key));
        if (!keys.ask(key)) {
            keys.miss(key, expected);
            sound = false;
        }
        return node;
    }

    private void notATable(String key) {
        fault(key, "must be a table", "write [" + label(key) + "] and its keys below");
    }

    private TableReader open(String label, Node.Branch branch) {
        TableReader reader = new TableReader(label, branch, faults);
        inner.add(reader);
        return reader;
    }

    /** Stands in for a table that is not there: what is asked of it is not told, and nothing is built from it. */
    private TableReader silent() {
        TableReader reader = new TableReader(path, new Node.Branch(table.origin(), Map.of()), new Faults());
        reader.sound = false;
        return reader;
    }

    private void add(Fault fault) {
        faults.add(fault);
        sound = false;
    }

    private String label(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
