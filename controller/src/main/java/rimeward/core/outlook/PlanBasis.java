package rimeward.core.outlook;

import java.util.List;

/**
 * What a plan rests on.
 *
 * @param course what the weather rests on
 * @param tunnelNights the tunnel was learned from so many nights; 0: it is assumed from the settings
 * @param assumed what else nobody knew, one sentence's worth each
 */
public record PlanBasis(Course.Basis course, int tunnelNights, List<String> assumed) {
    public PlanBasis {
        assumed = List.copyOf(assumed);
    }

    /** Whether weather or tunnel are no more than guessed. */
    public boolean isGuess() {
        return course instanceof Course.Basis.Guess || tunnelNights == 0;
    }

    /** For people. */
    public String inWords() {
        String tunnel = tunnelNights == 0
                ? "the tunnel as the settings describe it, not learned yet"
                : "the tunnel as learned from " + tunnelNights + (tunnelNights == 1 ? " night" : " nights");
        String more = assumed.isEmpty() ? "" : "; assumed: " + String.join("; ", assumed);
        return "weather by " + course.inWords() + "; " + tunnel + more;
    }
}
