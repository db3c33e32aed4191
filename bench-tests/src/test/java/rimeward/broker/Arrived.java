package rimeward.broker;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rimeward.alert.Alert;

/**
 * What a subscriber was told of an alert.
 *
 * @param number of the alert in the record
 * @param words as {@link #words(Alert)} has them
 */
record Arrived(long number, String words) {
    private static final Pattern TOLD =
            Pattern.compile("\"id\":\"([a-z0-9-]+)\",\"number\":(\\d+),.*\"status\":\"([a-z]+)\"");

    /** Its id and what became of it. */
    static String words(Alert alert) {
        return alert.id() + " " + alert.change();
    }

    /** All that came, in order, some perhaps twice. */
    static List<Arrived> at(Subscriber grower) {
        return grower.texts("/$incident/").stream()
                .map(TOLD::matcher)
                .filter(Matcher::find)
                .map(told -> new Arrived(
                        Long.parseLong(told.group(2)),
                        told.group(1) + " " + told.group(3).toUpperCase(Locale.ROOT)))
                .toList();
    }

    /** The same, each once. */
    static List<String> onceAt(Subscriber grower) {
        return at(grower).stream().map(Arrived::words).distinct().toList();
    }
}
