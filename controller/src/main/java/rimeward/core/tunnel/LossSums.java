package rimeward.core.tunnel;

import java.util.List;

/**
 * Page's two sums over nights (Biometrika 41, 1954, 100–115): each adds up how much likelier a night is if the loss had grown, or fallen, by
 * {@link #SOUGHT} than if it had not, and begins anew where that is below nothing. A sum that passes {@link #ENOUGH} says that it changed, and
 * where it last began says when (Hinkley, Biometrika 58, 1971, 509–523).
 *
 * @param settled the oldest so many nights are behind the beginnings of both sums: they belong to the level
 * @param changedAt place of the first night of the change; −1: nothing changed
 */
record LossSums(int settled, int changedAt) {
    /** Logarithm of the factor that is looked for. Own choice: 15 %. */
    static final double SOUGHT = 0.14;

    /** Logarithm of the likelihood ratio that is enough. Own choice, measured by {@code LossBench}: less than one false alarm a winter. */
    static final double ENOUGH = 7;

    /** A night counts for no more than so many standard deviations: no single one is believed, however wild. Own choice. */
    private static final double FARTHEST = 2;

    static LossSums over(List<LossNight> nights, LossLevel level) {
        double more = 0;
        double less = 0;
        int moreSince = 0;
        int lessSince = 0;
        int settled = 0;
        for (int i = 0; i < nights.size(); i++) {
            LossNight night = nights.get(i);
            double deviation = level.deviation(night);
            double apart = (night.logFactor() - level.mean()) / deviation;
            double step = SOUGHT / deviation;
            double believed = StrictMath.max(-FARTHEST, StrictMath.min(FARTHEST, apart));
            more = StrictMath.max(0, more + step * (believed - step / 2));
            less = StrictMath.max(0, less + step * (-believed - step / 2));
            moreSince = more > 0 ? moreSince : i + 1;
            lessSince = less > 0 ? lessSince : i + 1;
            settled = StrictMath.min(moreSince, lessSince);
            if (more > ENOUGH || less > ENOUGH) {
                return new LossSums(settled, more > ENOUGH ? moreSince : lessSince);
            }
        }
        return new LossSums(settled, -1);
    }

    boolean hasChanged() {
        return changedAt >= 0;
    }
}
