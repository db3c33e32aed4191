package rimeward.port;

import java.util.Optional;
import rimeward.core.outlook.Forecast;

/** Where hourly forecasts come from. Whoever fetches them does so on a thread of its own. */
public interface Forecasts {
    /** The newest that is fresh enough to be used, as it came. Never blocks and never throws. */
    Optional<Forecast> newest();

    /** Begins to look for a newer one. Never blocks and never throws. */
    void askAnew();

    /** What is wrong with the source at present, for people; empty where nothing is. */
    Optional<String> trouble();

    /** Where nobody forecasts anything. */
    static Forecasts none() {
        return new Forecasts() {
            @Override
            public Optional<Forecast> newest() {
                return Optional.empty();
            }

            @Override
            public void askAnew() {}

            @Override
            public Optional<String> trouble() {
                return Optional.empty();
            }
        };
    }
}
