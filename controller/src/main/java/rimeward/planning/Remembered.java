package rimeward.planning;

import java.util.Optional;
import java.util.function.Function;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.KeptForecast;
import rimeward.core.tunnel.LossWatch;
import rimeward.port.History;

/** What the planner keeps in the record under a name. What cannot be read back, of another version perhaps, counts as never kept. */
public final class Remembered {
    static final String FORECAST = "forecast";
    static final String LOSS = "heat-loss";
    private static final String ERRORS = "forecast-errors of ";

    private Remembered() {}

    /** The forecast that the last plan was made by. */
    public static Optional<Forecast> forecast(History history) {
        return parsed(history.learned(FORECAST), KeptForecast::read);
    }

    static String errorsOf(String source) {
        return ERRORS + source;
    }

    /** What a source's forecasts missed here before. */
    public static ForecastErrors errors(History history, String source) {
        return parsed(history.learned(errorsOf(source)), ForecastErrors::parse).orElse(ForecastErrors.USUAL);
    }

    /** What the nights so far said of the heat loss. */
    static LossWatch loss(History history) {
        return parsed(history.learned(LOSS), LossWatch::parse).orElse(LossWatch.NEW);
    }

    private static <T> Optional<T> parsed(Optional<String> text, Function<String, T> parser) {
        try {
            return text.map(parser);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
