package rimeward.adapter.config;

import java.util.Optional;
import rimeward.site.InputLine;

/** Reads the table of a line that is read. */
final class InputTable {
    private InputTable() {}

    /**
     * Reads it.
     *
     * @param so what is so while the line is active: {@code the tank is full}
     */
    static Optional<InputLine> read(TableReader table, String so) {
        String chip = table.get("chip", Kinds.text());
        int line = table.get("line", Kinds.whole(0, 511));
        boolean activeLow = table.get("active_low", Kinds.yesNo("whether the line is low while " + so));
        InputLine.Pull pull = table.get("pull", Kinds.word(InputLine.Pull.class));
        return table.whenSound(() -> new InputLine(chip, line, activeLow, pull));
    }
}
