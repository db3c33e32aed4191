package rimeward.planning;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.Forecast;

/** The weather of the night where it cannot be corrected by what was seen here. */
public final class PlainCourse {
    /** Spread of an uncorrected forecast at once and a day ahead, K. Own choice. */
    private static final double SPREAD_K = 1.5;

    private static final double SPREAD_A_DAY_K = 1;

    private static final double HOUR_S = 3600;

    private PlainCourse() {}

    /** From now to the forecast's end. Where it says no dew point, the air is taken to be saturated at its lowest (FAO-56, eq. 48). */
    public static Course of(Forecast forecast, long nowS) {
        List<Course.Step> steps = new ArrayList<>();
        double lowestC = Double.POSITIVE_INFINITY;
        for (Forecast.Point point : forecast.points()) {
            lowestC = Math.min(lowestC, point.airC());
        }
        for (Forecast.Point point : forecast.points()) {
            double aheadH = Math.max(0, (point.epochS() - nowS) / HOUR_S);
            steps.add(new Course.Step(
                    point.epochS(),
                    point.airC(),
                    SPREAD_K + SPREAD_A_DAY_K * aheadH / 24,
                    point.dewPointC().orElse(Math.min(point.airC(), lowestC))));
        }
        return new Course(new Course.Basis.Forecasted(forecast.source(), forecast.issuedEpochS(), 0), steps);
    }

    /** Of a night whose lowest alone is forecast. */
    public static Course of(String source, long nowS, double outsideC, double lowestC, double spreadK, long endS) {
        long coldestS = nowS + (endS - nowS) * 4 / 5;
        return new Course(
                new Course.Basis.Forecasted(source, nowS, 0),
                List.of(
                        step(nowS, outsideC, spreadK / 2, lowestC),
                        step(coldestS, lowestC, spreadK, lowestC),
                        step(endS, lowestC + 1, spreadK, lowestC)));
    }

    private static Course.Step step(long epochS, double airC, double spreadK, double lowestC) {
        return new Course.Step(epochS, airC, spreadK, Math.min(airC, lowestC));
    }
}
