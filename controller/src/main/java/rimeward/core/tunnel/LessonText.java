package rimeward.core.tunnel;

import java.util.Locale;
import rimeward.site.Site;
import rimeward.site.Tunnel;

/** A lesson for people. */
public final class LessonText {
    /** A pattern as strong as this comes by luck once in a hundred times. */
    private static final double UNLIKELY = 0.01;

    private LessonText() {}

    /** A table of what was learned beside what the settings say, or why nothing was. */
    public static String sheet(Lesson lesson, Site site) {
        if (lesson instanceof Lesson.TooFew few) {
            return "Not enough nights yet: " + few.nights() + " of the " + few.needed()
                    + " days without a hole that are needed. Until then the settings count.\n";
        }
        if (lesson instanceof Lesson.Unclear unclear) {
            return unclear.nights() + " days were looked at, but " + unclear.why() + ". The settings count.\n";
        }
        return table((Lesson.Learned) lesson, site.tunnel());
    }

    /** The same in one sentence. */
    public static String brief(Lesson lesson) {
        if (lesson instanceof Lesson.TooFew few) {
            return "not learned yet: " + few.nights() + " of the " + few.needed()
                    + " days without a hole that are needed";
        }
        if (lesson instanceof Lesson.Unclear unclear) {
            return "not learned: " + unclear.nights() + " days were looked at, but " + unclear.why();
        }
        Figure loss = ((Lesson.Learned) lesson).estimate().heatLossWPerK();
        return String.format(
                Locale.ROOT,
                "it loses %.0f W/K, from %.0f to %.0f with 95 %%, as %d days teach",
                loss.value(),
                loss.least(),
                loss.most(),
                ((Lesson.Learned) lesson).estimate().nights());
    }

    private static String table(Lesson.Learned learned, Tunnel said) {
        TunnelEstimate found = learned.estimate();
        return "Learned from " + found.nights() + " days of the record; the spread is that of 95 %.\n\n"
                + line("heat loss, W/K", found.heatLossWPerK(), 1, said.heatLossWPerK())
                + line("between air and mass, W/K", found.massCouplingWPerK(), 1, said.massCouplingWPerK())
                + line("air's capacity, kJ/K", found.airCapacityJPerK(), 1e3, said.airCapacityJPerK())
                + line("mass's capacity, kJ/K", found.massCapacityJPerK(), 1e3, said.massCapacityJPerK())
                + "\nHeat loss is told for nights as cold as these, the cold sky's part among it.\n"
                + (learned.whiteness() < UNLIKELY
                        ? "What was not foreseen has a pattern (Ljung-Box), so this tunnel is not quite as simple as the"
                                + " model, and the spreads are rather too small.\n"
                        : "");
    }

    private static String line(String name, Figure figure, double unit, double said) {
        return String.format(
                Locale.ROOT,
                "%-27s %8.0f  from %.0f to %.0f; the settings say %.0f\n",
                name,
                figure.value() / unit,
                figure.least() / unit,
                figure.most() / unit,
                said / unit);
    }
}
