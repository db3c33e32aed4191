package rimeward.planning;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.port.Past;

/** Holds each evening's forecast against the night that came, source by source. For one thread. */
final class ForecastSchool {
    private final Past past;
    private final Findings findings;
    private @Nullable Forecast pending;
    private String source = "";
    private ForecastErrors errors = ForecastErrors.USUAL;

    ForecastSchool(Past past, Findings findings) {
        this.past = past;
        this.findings = findings;
    }

    /** What the forecast's source missed here before. */
    ForecastErrors errors(Optional<Forecast> forecast) {
        return forecast.map(said -> of(said.source())).orElse(ForecastErrors.USUAL);
    }

    private ForecastErrors of(String name) {
        if (!name.equals(source)) {
            errors = Remembered.errors(past, name);
            source = name;
        }
        return errors;
    }

    /** This one is to be judged when its night is over. */
    void judgeLater(Forecast forecast) {
        pending = forecast;
    }

    /** Judges it by the air that was seen. */
    void learn(Learned seen) {
        Forecast forecast = pending;
        if (forecast == null) {
            return;
        }
        pending = null;
        errors = of(forecast.source()).after(forecast, seen.outside(), seen.sun());
        findings.keeps(Remembered.errorsOf(forecast.source()), errors.toText());
    }
}
