package rimeward.core.outlook;

import rimeward.core.tunnel.Figure;

/** How likely a figure is below a limit, its errors normal. */
final class Below {
    private Below() {}

    static double zero(Figure figure) {
        return limit(figure, 0);
    }

    static double limit(Figure figure, double limit) {
        double byK = limit - figure.value();
        if (figure.standardError() <= 0) {
            return byK > 0 ? 1 : byK < 0 ? 0 : 0.5;
        }
        return normal(byK / figure.standardError());
    }

    /** Standard normal distribution up to z, within 7.5e-8 (Abramowitz and Stegun 1964, 26.2.17; constants from memory). */
    static double normal(double z) {
        double t = 1 / (1 + 0.2316419 * StrictMath.abs(z));
        double sum = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        double tail = StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * StrictMath.PI) * sum;
        return z > 0 ? 1 - tail : tail;
    }
}
