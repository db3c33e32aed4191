package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.Course.Step;
import rimeward.core.outlook.OutsideAir.Seen;

/**
 * How wrong one source's forecasts have been at this tunnel, by how long ahead they spoke and whether of night or day: a hollow is colder
 * than the forecast on clear nights, and a sensor in the sun warmer by day. Begins with a usual spread and no bias, and forgets slowly.
 *
 * @param night by lead, as {@link #LEADS_H} has it
 * @param day the same
 * @param lowest of nights' lowest temperatures, beyond what their hours said: the coldest hour is the clearest and calmest
 */
public record ForecastErrors(List<LeadErrors> night, List<LeadErrors> day, LeadErrors lowest) {
    /** Leads are counted from the forecast's making up to these, h; what reaches farther counts with the last. */
    private static final int[] LEADS_H = {3, 6, 12, 24, 48};

    private static final double[] MIDDLE_H = {1.5, 4.5, 9, 18, 36};

    /** Of the air temperature, until own nights are known, K. Own choices, on the wide side: the place may be a hollow. */
    private static final double[] PRIOR_NIGHT_K = {1.5, 1.8, 2.0, 2.3, 2.8};

    private static final double[] PRIOR_DAY_K = {1.3, 1.5, 1.7, 2.0, 2.5};
    private static final double PRIOR_LOWEST_K = 1.5;

    /** A night's lowest is learned from within this time of the forecast's making, and from so long a piece of it, s. Own choices. */
    private static final long LOWEST_WITHIN_S = 86_400;

    private static final long LEAST_NIGHT_S = 21_600;
    private static final double HOUR_S = 3600;

    /** Nothing learned yet. */
    public static final ForecastErrors USUAL =
            new ForecastErrors(prior(PRIOR_NIGHT_K), prior(PRIOR_DAY_K), new LeadErrors(0, 0, PRIOR_LOWEST_K));

    /** What an hour's forecast is worth: what to add to it, and the standard deviation then, K. */
    public record Expected(double biasK, double spreadK) {}

    public ForecastErrors {
        night = List.copyOf(night);
        day = List.copyOf(day);
    }

    private static List<LeadErrors> prior(double[] spreadK) {
        List<LeadErrors> all = new ArrayList<>();
        for (double each : spreadK) {
            all.add(new LeadErrors(0, 0, each));
        }
        return all;
    }

    /** Learned from so many nights. */
    public int nights() {
        return night.stream().mapToInt(LeadErrors::nights).max().orElse(0);
    }

    /**
     * Of one hour.
     *
     * @param leadS from the making of the forecast to the hour, s
     * @param darkness share of night, as {@link SunTimes#darkness} has it
     */
    public Expected at(long leadS, double darkness) {
        double leadH = StrictMath.max(MIDDLE_H[0], StrictMath.min(MIDDLE_H[MIDDLE_H.length - 1], leadS / HOUR_S));
        int after = 1;
        while (leadH > MIDDLE_H[after]) {
            after++;
        }
        double part = (leadH - MIDDLE_H[after - 1]) / (MIDDLE_H[after] - MIDDLE_H[after - 1]);
        Expected early = mixed(after - 1, darkness);
        Expected late = mixed(after, darkness);
        return new Expected(between(early.biasK, late.biasK, part), between(early.spreadK, late.spreadK, part));
    }

    private Expected mixed(int lead, double darkness) {
        LeadErrors light = day.get(lead);
        LeadErrors dark = night.get(lead);
        return new Expected(
                between(light.biasK(), dark.biasK(), darkness),
                between(light.predictiveSpreadK(), dark.predictiveSpreadK(), darkness));
    }

    private static double between(double from, double to, double part) {
        return from + part * (to - from);
    }

    /**
     * After one forecast was compared with what came. Hand in one or two a day, half a day apart, each with all that was seen of its time:
     * hours of one night are nearly one error, and the night counts once.
     */
    public ForecastErrors after(Forecast forecast, List<Seen> seen, SunTimes sun) {
        ForecastLine line = new ForecastLine(forecast);
        List<LeadErrors> dark = new ArrayList<>(night);
        List<LeadErrors> light = new ArrayList<>(day);
        for (int lead = 0; lead < LEADS_H.length; lead++) {
            int at = lead;
            List<Seen> then = seen.stream()
                    .filter(air -> leadOf(air.epochS() - forecast.issuedEpochS()) == at)
                    .toList();
            learn(
                    dark,
                    lead,
                    errorsK(line, then.stream().filter(air -> isDark(air, sun)).toList()));
            learn(
                    light,
                    lead,
                    errorsK(line, then.stream().filter(air -> !isDark(air, sun)).toList()));
        }
        return new ForecastErrors(dark, light, lowestAfter(forecast, line, seen, sun));
    }

    /** Compares the lowest that was seen with the one that would have been expected, of the same hours. */
    private LeadErrors lowestAfter(Forecast forecast, ForecastLine line, List<Seen> seen, SunTimes sun) {
        List<Seen> dark = seen.stream()
                .filter(air -> isDark(air, sun) && line.airC(air.epochS()).isPresent())
                .filter(air -> air.epochS() >= forecast.issuedEpochS()
                        && air.epochS() < forecast.issuedEpochS() + LOWEST_WITHIN_S)
                .toList();
        if (dark.isEmpty() || dark.get(dark.size() - 1).epochS() - dark.get(0).epochS() < LEAST_NIGHT_S) {
            return lowest;
        }
        List<Step> said = dark.stream()
                .map(air -> step(air.epochS(), line.airC(air.epochS()).orElseThrow(), forecast, sun))
                .toList();
        double saidC = Lowest.of(said, Course.Basis.Forecasted.MEMORY_S).airC();
        double seenC = dark.stream().mapToDouble(Seen::airC).min().orElseThrow();
        return lowest.after(new double[] {seenC - saidC});
    }

    private Step step(long epochS, double saidC, Forecast forecast, SunTimes sun) {
        Expected expected = at(epochS - forecast.issuedEpochS(), sun.darkness(epochS));
        return new Step(epochS, saidC + expected.biasK, expected.spreadK, saidC);
    }

    private static boolean isDark(Seen air, SunTimes sun) {
        return sun.darkness(air.epochS()) > 0.5;
    }

    private static void learn(List<LeadErrors> all, int lead, double[] errorsK) {
        if (errorsK.length > 0) {
            all.set(lead, all.get(lead).after(errorsK));
        }
    }

    private static double[] errorsK(ForecastLine line, List<Seen> seen) {
        return seen.stream()
                .flatMapToDouble(air -> line.airC(air.epochS()).stream().map(saidC -> air.airC() - saidC))
                .toArray();
    }

    /** Which lead; −1 before the forecast was made, or too far off to learn from. */
    private static int leadOf(long leadS) {
        for (int i = 0; leadS >= 0 && i < LEADS_H.length; i++) {
            if (leadS < LEADS_H[i] * HOUR_S) {
                return i;
            }
        }
        return -1;
    }

    /** A few lines of plain text; {@link #parse} reads them back. */
    public String toText() {
        return ErrorsText.write(this);
    }

    /** @throws IllegalArgumentException if it is not what {@link #toText} writes */
    public static ForecastErrors parse(String text) {
        return ErrorsText.read(text, LEADS_H.length);
    }
}
