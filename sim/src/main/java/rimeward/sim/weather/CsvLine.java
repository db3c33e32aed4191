package rimeward.sim.weather;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a text table, with its number in the file. Cells may be quoted as in RFC 4180, except that a quoted cell ends
 * on its line.
 */
record CsvLine(int number, List<String> cells) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** All lines but empty ones and {@code # comments}; none, with a fault, if the file cannot be read. */
    static List<CsvLine> readAll(Path file, char separator, Faults faults) {
        return split(readText(file, faults), separator);
    }

    static List<CsvLine> split(List<String> texts, char separator) {
        var lines = new ArrayList<CsvLine>();
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i);
            if (!text.isBlank() && !text.startsWith("#")) {
                lines.add(new CsvLine(i + 1, cells(text, separator)));
            }
        }
        return lines;
    }

    /** The file's lines; none, with a fault, if it cannot be read. */
    static List<String> readText(Path file, Faults faults) {
        try {
            return withoutMark(Files.readAllLines(file, StandardCharsets.UTF_8));
        } catch (NoSuchFileException e) {
            faults.add("there is no such file; check its name and where it is looked for");
        } catch (CharacterCodingException e) {
            faults.add("is not UTF-8 text; save it as UTF-8");
        } catch (IOException e) {
            faults.add("cannot be read (" + e.getMessage() + "); check that it is a readable file");
        }
        return List.of();
    }

    private static List<String> withoutMark(List<String> texts) {
        if (texts.isEmpty() || !texts.get(0).startsWith(BYTE_ORDER_MARK)) {
            return texts;
        }
        var clean = new ArrayList<>(texts);
        clean.set(0, texts.get(0).substring(BYTE_ORDER_MARK.length()));
        return clean;
    }

    private static List<String> cells(String text, char separator) {
        var cells = new ArrayList<String>();
        var cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append(text.charAt(++i));
                } else {
                    quoted = !quoted;
                }
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().trim());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().trim());
        return cells;
    }
}
