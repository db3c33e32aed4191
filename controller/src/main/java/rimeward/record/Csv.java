package rimeward.record;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a table as CSV and back, without loss. Text stands in quotes (a quote in it is doubled), a number bare, and what is
 * absent is an empty cell: so the empty text and nothing differ. Line ends within text are written as {@code \n}.
 */
public final class Csv {
    private Csv() {}

    /** One row: each cell a {@link String}, a {@link Number} or null. */
    public static String line(List<? extends @Nullable Object> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            line.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
        }
        return line.append('\n').toString();
    }

    private static String cell(@Nullable Object cell) {
        if (cell == null) {
            return "";
        }
        if (cell instanceof Number number) {
            return number.toString();
        }
        String text = cell.toString().replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    /**
     * Reads a row back: texts, and whole or broken numbers as {@link Long} or {@link Double}.
     *
     * @throws IllegalArgumentException if it is no such row
     */
    public static List<@Nullable Object> parse(String line) {
        List<@Nullable Object> cells = new ArrayList<>();
        int at = 0;
        while (true) {
            int end = endOfCell(line, at);
            cells.add(value(line.substring(at, end)));
            if (end == line.length()) {
                return cells;
            }
            at = end + 1;
        }
    }

    private static int endOfCell(String line, int from) {
        boolean quoted = false;
        for (int i = from; i < line.length(); i++) {
            quoted ^= line.charAt(i) == '"';
            if (!quoted && line.charAt(i) == ',') {
                return i;
            }
        }
        if (quoted) {
            throw new IllegalArgumentException("a quote is opened and not closed");
        }
        return line.length();
    }

    private static @Nullable Object value(String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        if (cell.charAt(0) == '"') {
            if (cell.length() < 2 || cell.charAt(cell.length() - 1) != '"') {
                throw new IllegalArgumentException("text goes on behind its closing quote: " + cell);
            }
            return unescaped(cell.substring(1, cell.length() - 1).replace("\"\"", "\""));
        }
        try {
            return cell.matches("-?[0-9]+") ? (Object) Long.valueOf(cell) : (Object) Double.valueOf(cell);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("\"" + cell + "\" is no number; text must stand in quotes", e);
        }
    }

    private static String unescaped(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && i + 1 < text.length()) {
                i++;
                char next = text.charAt(i);
                c = next == 'n' ? '\n' : next == 'r' ? '\r' : next;
            }
            out.append(c);
        }
        return out.toString();
    }
}
