package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;

/**
 * One tunnel and one weather that may be tonight's: the likeliest, or one number of it off by its standard error.
 *
 * @param tunnel its nine numbers, in the order of {@link TunnelEstimate}
 * @param outsideSpreads how many standard deviations the outside is warmer than expected, all night
 * @param massShiftK how much warmer the mass is at the start than is taken, K
 * @param cornerShiftK how much colder the cold corner is than is taken, K
 */
record World(List<Double> tunnel, double outsideSpreads, double massShiftK, double cornerShiftK) {
    /** No number but the ground's heat goes below this share of itself, or the model would run backwards. */
    private static final double LEAST_SHARE = 0.1;

    private static final int GROUND = 4;

    /** The mass at the start, where nobody knows it, K. Own choice. */
    private static final double UNKNOWN_MASS_K = 2;

    /** The same where it was filtered from the record, K. Own choice. */
    private static final double KNOWN_MASS_K = 0.5;

    /** Two worlds that differ in one number, by a standard error to either side. */
    record Pair(World less, World more) {}

    static World likeliest(TunnelEstimate estimate) {
        return new World(figures(estimate).stream().map(Figure::value).toList(), 0, 0, 0);
    }

    /** Every number that is not known for certain, one at a time: together they are the spread. Taken to be independent. */
    static List<Pair> around(TunnelEstimate estimate, PlanStart start, PlanChoices choices) {
        World likeliest = likeliest(estimate);
        List<Pair> pairs = new ArrayList<>();
        List<Figure> figures = figures(estimate);
        for (int i = 0; i < figures.size(); i++) {
            if (figures.get(i).standardError() > 0) {
                pairs.add(new Pair(likeliest.with(i, figures.get(i), -1), likeliest.with(i, figures.get(i), 1)));
            }
        }
        List<Double> same = likeliest.tunnel;
        double massK = start.massC().isPresent() ? KNOWN_MASS_K : UNKNOWN_MASS_K;
        double cornerK = choices.doubtK() / 2; // a stated bound is taken for two standard deviations
        pairs.add(new Pair(new World(same, -1, 0, 0), new World(same, 1, 0, 0)));
        pairs.add(new Pair(new World(same, 0, -massK, 0), new World(same, 0, massK, 0)));
        pairs.add(new Pair(new World(same, 0, 0, -cornerK), new World(same, 0, 0, cornerK)));
        return pairs;
    }

    private World with(int place, Figure figure, int sign) {
        double value = figure.value() + sign * figure.standardError();
        List<Double> others = new ArrayList<>(tunnel);
        others.set(place, place == GROUND ? value : StrictMath.max(LEAST_SHARE * figure.value(), value));
        return new World(List.copyOf(others), outsideSpreads, massShiftK, cornerShiftK);
    }

    private static List<Figure> figures(TunnelEstimate estimate) {
        return List.of(
                estimate.heatLossWPerK(),
                estimate.massCouplingWPerK(),
                estimate.airCapacityJPerK(),
                estimate.massCapacityJPerK(),
                estimate.groundW(),
                estimate.heaterYield(),
                estimate.dryerYield(),
                estimate.airExchangeKgPerS(),
                estimate.wettingKgPerS());
    }

    double heatLossWPerK() {
        return tunnel.get(0);
    }

    double massCouplingWPerK() {
        return tunnel.get(1);
    }

    double airCapacityJPerK() {
        return tunnel.get(2);
    }

    double massCapacityJPerK() {
        return tunnel.get(3);
    }

    double groundW() {
        return tunnel.get(GROUND);
    }

    double heaterYield() {
        return tunnel.get(5);
    }

    double dryerYield() {
        return tunnel.get(6);
    }

    double airExchangeKgPerS() {
        return tunnel.get(7);
    }

    double wettingKgPerS() {
        return tunnel.get(8);
    }
}
