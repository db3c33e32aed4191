package rimeward.core.outlook;

import java.util.Locale;

/** Chances for people, in words and in percent. The words' limits are our own choice. */
public final class ChanceWords {
    private ChanceWords() {}

    /** "below 1 %", "3 %", "above 99 %". */
    public static String percent(double chance) {
        if (chance < 0.01) {
            return "below 1 %";
        }
        return chance > 0.99 ? "above 99 %" : String.format(Locale.ROOT, "%.0f %%", 100 * chance);
    }

    /** Whether the floor will hold, as a tired person says it. */
    public static String willHold(double chanceCold) {
        if (chanceCold < 0.01) {
            return "will hold";
        }
        if (chanceCold < 0.05) {
            return "will very probably hold";
        }
        if (chanceCold < 0.2) {
            return "will probably hold";
        }
        if (chanceCold < 0.5) {
            return "may not hold";
        }
        return chanceCold < 0.95 ? "will probably not hold" : "will not hold";
    }
}
