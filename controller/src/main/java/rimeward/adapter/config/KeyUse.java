package rimeward.adapter.config;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which keys of a table were asked for, and so which are missing and which are unknown. */
final class KeyUse {
    private final Set<String> present;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Map<String, String> missing = new LinkedHashMap<>();

    KeyUse(Set<String> present) {
        this.present = present;
    }

    /** Makes the key a known one; whether the table has it. */
    boolean ask(String key) {
        asked.add(key);
        return present.contains(key);
    }

    void miss(String key, String expected) {
        missing.put(key, expected);
    }

    /** Keys that nobody asked for, each with what to do; one that is a misspelt missing key is missing no more. */
    Map<String, String> unknown() {
        Map<String, String> unknown = new LinkedHashMap<>();
        for (String key : present) {
            if (!asked.contains(key)) {
                unknown.put(key, remedy(key));
            }
        }
        return unknown;
    }

    private String remedy(String key) {
        List<String> free =
                asked.stream().filter(known -> !present.contains(known)).toList();
        Optional<String> near = Nearest.of(key, free).or(() -> Nearest.of(key, asked));
        near.ifPresent(missing::remove);
        return near.map(known -> "did you mean " + known + "?")
                .orElseGet(() -> "remove it; known here: " + String.join(", ", asked));
    }

    /** Keys that must be there and are not, each with what it should be. */
    Map<String, String> missing() {
        return missing;
    }
}
