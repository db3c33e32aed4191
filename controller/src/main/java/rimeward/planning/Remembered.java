package rimeward.planning;

import java.util.Optional;
import java.util.function.Function;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.KeptForecast;
import rimeward.core.tunnel.LossWatch;
import rimeward.port.Past;

/** What the planner keeps in the record under a name. What cannot be read back, of another version perhaps, counts as never kept. */
public final class Remembered {
    static final String FORECAST = "forecast";
    static final String LOSS = "heat-loss";
    private static final String ERRORS = "forecast-errors of ";

    private Remembered() {}

    /** The forecast that the last plan was made by. */
    public static Optional<Forecast> forecast(Past past) {
        return parsed(past.learned(FORECAST), KeptForecast::read);
    }

    static String errorsOf(String source) {
        return ERRORS + source;
    }

    /** What a source's forecasts missed here before. */
    public static ForecastErrors errors(Past past, String source) {
        return parsed(past.learned(errorsOf(source)), ForecastErrors::parse).orElse(ForecastErrors.USUAL);
    }

    /** What the nights so far said of the heat loss. */
    static LossWatch loss(Past past) {
        return parsed(past.learned(LOSS), LossWatch::parse).orElse(LossWatch.NEW);
    }

    private static <T> Optional<T> parsed(Optional<String> text, Function<String, T> parser) {
        try {
            return text.map(parser);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
