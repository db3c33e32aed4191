package rimeward.adapter.forecast;

import java.util.Optional;
import rimeward.core.outlook.Forecast;

/** The settings name none. */
final class NoSource implements Source {
    private static final Due NEVER = new Due(Long.MAX_VALUE, Long.MAX_VALUE);

    @Override
    public String name() {
        return "none";
    }

    @Override
    public Due first(long nowMs) {
        return NEVER;
    }

    @Override
    public Due attempt(long nowMs) {
        return NEVER;
    }

    @Override
    public Optional<Forecast> newest() {
        return Optional.empty();
    }

    @Override
    public Optional<String> trouble() {
        return Optional.empty();
    }
}
