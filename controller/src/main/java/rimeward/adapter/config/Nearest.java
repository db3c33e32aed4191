package rimeward.adapter.config;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Which of the known words a misspelt one was meant to be. */
final class Nearest {
    private Nearest() {}

    /** The nearest, if it is near enough to be worth suggesting: about one slip in three letters. */
    static Optional<String> of(String word, Collection<String> known) {
        String best = "";
        int bestSlips = Math.max(1, word.length() / 3) + 1;
        for (String candidate : known) {
            int slips = slips(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (slips < bestSlips) {
                best = candidate;
                bestSlips = slips;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** Letters added, left out, exchanged or swapped with their neighbour (optimal string alignment). */
    private static int slips(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int step(int[][] cost, String a, String b, int i, int j) {
        int exchange = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(exchange, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}
