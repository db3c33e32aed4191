package rimeward.map;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Rows of {@code name | allowed allowed …}, where {@code x.*} stands for x and all below it and {@code *} for everything. */
record MapTable(Map<String, List<String>> rows) {

    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Pattern BAR = Pattern.compile("\\|");

    static MapTable parse(String text) {
        Map<String, List<String>> rows = new TreeMap<>();
        for (String line : text.lines().filter(line -> !line.isBlank()).toList()) {
            List<String> cells = BAR.splitAsStream(line).map(String::strip).toList();
            List<String> allowed = cells.stream()
                    .skip(1)
                    .flatMap(SPACE::splitAsStream)
                    .filter(name -> !name.isEmpty())
                    .sorted()
                    .toList();
            if (rows.put(cells.get(0), allowed) != null) {
                throw new IllegalArgumentException("two rows for " + cells.get(0));
            }
        }
        return new MapTable(rows);
    }

    /** Reads rows of {@code | `package` | purpose | `import` `import` |}; other lines are no rows. */
    static MapTable fromMarkdown(String text) {
        StringBuilder rows = new StringBuilder();
        for (String line : text.lines().filter(line -> line.startsWith("| `")).toList()) {
            List<String> cells = BAR.splitAsStream(line).map(String::strip).toList();
            if (cells.size() == 4) {
                String allowed = cells.get(3).equals("nothing of ours")
                        ? ""
                        : cells.get(3).replaceAll("[`,]", "");
                rows.append(cells.get(1).replace("`", ""))
                        .append(" | ")
                        .append(allowed)
                        .append('\n');
            }
        }
        return parse(rows.toString());
    }

    boolean has(String name) {
        return rows.containsKey(name);
    }

    boolean allows(String name, String target) {
        return rows.getOrDefault(name, List.of()).stream().anyMatch(allowed -> covers(allowed, target));
    }

    /** Whether an entry such as {@code core.*} stands for the package or prefix {@code target}. */
    static boolean covers(String entry, String target) {
        if (entry.equals("*")) {
            return true;
        }
        if (entry.endsWith(".*")) {
            String stem = entry.substring(0, entry.length() - 2);
            return target.equals(stem) || target.startsWith(stem + ".");
        }
        return entry.equals(target);
    }
}
