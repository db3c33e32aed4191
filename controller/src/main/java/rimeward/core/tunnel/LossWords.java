package rimeward.core.tunnel;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;

/** A change of heat loss for people. */
public final class LossWords {
    private LossWords() {}

    /** How much, since when, and what to look for. */
    public static String of(LossChange change, ZoneId zone) {
        String since = "since the night of " + day(change.sinceEpochS(), zone) + ", by the nights until now ("
                + range(change) + " %). ";
        return change.isMore()
                ? "Your tunnel loses about " + Math.round(change.percent()) + " % more heat " + since
                        + "Look for a slipped cover, a tear, a gap at the door or a vent left open. If all is sound, a heater"
                        + " may give less than it should."
                : "Your tunnel loses about " + Math.round(-change.percent()) + " % less heat " + since
                        + "Good, if you mended it or added something. If not, see that the outside sensor hangs where it"
                        + " did.";
    }

    private static String range(LossChange change) {
        long least = Math.round(change.isMore() ? change.leastPercent() : -change.mostPercent());
        long most = Math.round(change.isMore() ? change.mostPercent() : -change.leastPercent());
        return least + " to " + most;
    }

    /** "Tuesday 3 December": written here because formats of the JDK are not the same in every version. */
    private static String day(long epochS, ZoneId zone) {
        ZonedDateTime at = Instant.ofEpochSecond(epochS).atZone(zone);
        return word(at.getDayOfWeek().name()) + " " + at.getDayOfMonth() + " "
                + word(at.getMonth().name());
    }

    private static String word(String name) {
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }
}
