package rimeward.outlook;

import java.util.Locale;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import rimeward.core.outlook.FrostAlert;
import rimeward.core.outlook.FrostChance;

/**
 * What the frost-risk alert is worth over many made winters. Measures and asserts nothing.
 *
 * <p>Arguments: how many winters, how many nights each, the first seed (the thresholds were chosen on seeds from 100000), and how wrong
 * forecasts are, where 1 is as published.
 */
final class FrostBench {
    private static final double[][] RULES = {
        {0.15, 0.05}, {0.2, 0.08}, {0.25, 0.1}, {0.3, 0.12}, {0.35, 0.15}, {0.4, 0.15}, {0.5, 0.2}
    };

    private FrostBench() {}

    public static void main(String[] args) {
        int winters = Integer.parseInt(args[0]);
        int nights = Integer.parseInt(args[1]);
        long first = Long.parseLong(args[2]);
        double scale = Double.parseDouble(args[3]);
        print(
                "%d winters of %d nights, from seed %d, forecasts %.1f times as wrong as published",
                winters, nights, first, scale);
        print(
                "the morning's forecast has the station's lowest within 2 K on %.1f %% of nights",
                within2K(first, winters, nights, scale));
        for (Knowledge knowledge : Knowledge.values()) {
            print("%n%s", knowledge.inWords);
            print(scores(first, winters, nights, scale, knowledge));
        }
    }

    static FrostScores scores(long first, int winters, int nights, double scale, Knowledge knowledge) {
        return new FrostScores(LongStream.range(first, first + winters)
                .parallel()
                .mapToObj(seed -> WinterRun.nights(new HollowWinter(seed, nights, scale), knowledge))
                .toList());
    }

    static double within2K(long first, int winters, int nights, double scale) {
        return 100
                * LongStream.range(first, first + winters)
                        .mapToObj(seed -> new HollowWinter(seed, nights, scale))
                        .mapToDouble(winter -> IntStream.range(0, nights)
                                        .filter(winter::isWithin2K)
                                        .count()
                                / (double) nights)
                        .average()
                        .orElseThrow();
    }

    /** As the service does it. */
    static boolean ours(boolean stood, double chance) {
        return new FrostAlert(stood).after(new FrostChance(chance, 0)).stands();
    }

    private static void print(FrostScores scores) {
        print("  frosts %d of %d nights", scores.frosts(), scores.nightCount());
        moment(scores, "noon", night -> 0);
        moment(scores, "sunset", LoggedNight::sunset);
        moment(scores, "midnight", night -> 12);
        print("  reliability at sunset: said, came, of so many nights");
        for (double[] bin : scores.reliability(LoggedNight::sunset)) {
            print("    %5.3f  %5.3f  %6.0f", bin[1], bin[2], bin[0]);
        }
        alerts(
                scores,
                String.format(Locale.ROOT, "ours %.2f/%.2f", FrostAlert.RAISED_AT, FrostAlert.CLEARED_BELOW),
                FrostBench::ours);
        for (double[] rule : RULES) {
            alerts(
                    scores,
                    String.format(Locale.ROOT, "     %.2f/%.2f", rule[0], rule[1]),
                    (stood, chance) -> chance >= (stood ? rule[1] : rule[0]));
        }
    }

    private static void moment(FrostScores scores, String name, ToIntFunction<LoggedNight> hour) {
        double[] off = scores.lowestOff(hour);
        print(
                "  at %-8s Brier %.4f, climatology %.4f, skill %.3f; lowest off by %.2f ± %.2f of its spread",
                name, scores.brier(hour), scores.climatologyBrier(), scores.skill(hour), off[0], off[1]);
    }

    private static void alerts(FrostScores scores, String name, FrostScores.Rule rule) {
        FrostScores.Alerts alerts = scores.alerts(rule);
        double frosts = alerts.hits() + alerts.misses();
        print(
                "  alert %s: misses %d (%.1f %%), false nights %d (%.1f %% of nights without frost; %.0f %% of alert nights),"
                        + " raised %d times; lead h: median %.1f, 10 %% %.1f, 90 %% %.1f",
                name,
                alerts.misses(),
                100 * alerts.misses() / frosts,
                alerts.falseNights(),
                100 * alerts.falseNights() / (scores.nightCount() - frosts),
                100.0 * alerts.falseNights() / (alerts.falseNights() + alerts.hits()),
                alerts.raised(),
                alerts.leadH(0.5),
                alerts.leadH(0.1),
                alerts.leadH(0.9));
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
