package rimeward.outlook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToIntFunction;

/** How good the alert was over many winters. A list of nights for each winter. */
final class FrostScores {
    static final int BINS = 10;
    private static final double MOST_LEAD_H = 24;

    private final List<List<LoggedNight>> winters;

    FrostScores(List<List<LoggedNight>> winters) {
        this.winters = winters;
    }

    private List<LoggedNight> nights() {
        return winters.stream().flatMap(List::stream).toList();
    }

    int nightCount() {
        return nights().size();
    }

    long frosts() {
        return nights().stream().filter(LoggedNight::isFrost).count();
    }

    /** Mean squared error of the probability at an hour of each night. */
    double brier(ToIntFunction<LoggedNight> hour) {
        return nights().stream()
                .mapToDouble(night -> square(night.chance(hour.applyAsInt(night)) - (night.isFrost() ? 1 : 0)))
                .average()
                .orElseThrow();
    }

    /** The same of somebody who says each winter's own frequency, known beforehand, every day: a hard opponent. */
    double climatologyBrier() {
        double sum = 0;
        for (List<LoggedNight> winter : winters) {
            double rate = winter.stream().filter(LoggedNight::isFrost).count() / (double) winter.size();
            sum += winter.size() * rate * (1 - rate);
        }
        return sum / nightCount();
    }

    double skill(ToIntFunction<LoggedNight> hour) {
        return 1 - brier(hour) / climatologyBrier();
    }

    /** For each tenth of probability: how often it was said, the mean of what was said, how often it came. */
    double[][] reliability(ToIntFunction<LoggedNight> hour) {
        double[][] bins = new double[BINS][3];
        for (LoggedNight night : nights()) {
            double said = night.chance(hour.applyAsInt(night));
            double[] bin = bins[Math.min(BINS - 1, (int) (said * BINS))];
            bin[0]++;
            bin[1] += said;
            bin[2] += night.isFrost() ? 1 : 0;
        }
        for (double[] bin : bins) {
            bin[1] /= Math.max(1, bin[0]);
            bin[2] /= Math.max(1, bin[0]);
        }
        return bins;
    }

    /** Mean and standard deviation of how far the expected lowest was off, in its own spreads: 0 and 1 were perfect. */
    double[] lowestOff(ToIntFunction<LoggedNight> hour) {
        double[] off = nights().stream()
                .mapToDouble(night -> night.said().get(hour.applyAsInt(night)).lowestOff())
                .toArray();
        double mean = 0;
        double squares = 0;
        for (double each : off) {
            mean += each / off.length;
            squares += each * each / off.length;
        }
        return new double[] {mean, Math.sqrt(squares - mean * mean)};
    }

    /** Whether an alert stands now, from whether it stood and what the chance is. */
    interface Rule {
        boolean stands(boolean stood, double chance);
    }

    /**
     * What a rule gives.
     *
     * @param hits frosts at whose beginning the alert stood
     * @param falseNights nights without one in which it stood at some time
     * @param raised how often it was raised
     * @param leadsH of the hits, at most a day, in rising order
     */
    record Alerts(int hits, int misses, int falseNights, int raised, List<Double> leadsH) {
        double leadH(double share) {
            return leadsH.isEmpty() ? 0 : leadsH.get((int) (share * (leadsH.size() - 1)));
        }
    }

    Alerts alerts(Rule rule) {
        int hits = 0;
        int misses = 0;
        int falseNights = 0;
        int raised = 0;
        List<Double> leadsH = new ArrayList<>();
        for (List<LoggedNight> winter : winters) {
            boolean stands = false;
            double sinceH = 0; // h before this night's noon, negative
            for (LoggedNight night : winter) {
                boolean stood = false;
                boolean warned = false;
                for (int hour = 0; hour < night.said().size(); hour++) {
                    boolean now = rule.stands(stands, night.chance(hour));
                    if (now && !stands) {
                        raised++;
                        sinceH = hour;
                    }
                    stands = now;
                    stood |= now;
                    if (hour <= night.onsetH()) {
                        warned = now;
                    }
                }
                if (night.isFrost() && warned && sinceH <= night.onsetH()) {
                    hits++;
                    leadsH.add(Math.min(MOST_LEAD_H, night.onsetH() - sinceH));
                } else if (night.isFrost()) {
                    misses++;
                } else if (stood) {
                    falseNights++;
                }
                sinceH -= MOST_LEAD_H;
            }
        }
        Collections.sort(leadsH);
        return new Alerts(hits, misses, falseNights, raised, leadsH);
    }

    private static double square(double x) {
        return x * x;
    }
}
