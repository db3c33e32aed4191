package rimeward.adapter.config;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Gathers the faults of one or several files, so that they can be told all at once. Open a reader for each file, read everything, then
 * call {@link #throwIfAny()} once before using what was read. For one thread.
 */
public final class Faults {
    private final List<TableReader> readers = new ArrayList<>();
    private final List<Fault> found = new ArrayList<>();

    /** A reader of the tree's top table whose faults end up here. */
    public TableReader reader(TomlTree tree) {
        TableReader reader = TableReader.top(tree.root(), this);
        readers.add(reader);
        return reader;
    }

    void add(Fault fault) {
        found.add(fault);
    }

    /**
     * Ends the reading: keys that nobody asked for are now unknown keys.
     *
     * @throws BadSettings if anything at all was wrong
     */
    public void throwIfAny() {
        readers.forEach(TableReader::finish);
        readers.clear();
        if (!found.isEmpty()) {
            List<String> files =
                    found.stream().map(fault -> fault.where().file()).distinct().toList();
            found.sort(Comparator.comparingInt(
                            (Fault fault) -> files.indexOf(fault.where().file()))
                    .thenComparingInt(fault -> fault.where().line()));
            throw new BadSettings(found);
        }
    }
}
