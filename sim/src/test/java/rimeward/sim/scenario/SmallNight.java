package rimeward.sim.scenario;

import java.nio.file.Path;

/** The shortest scenario that runs: the demo's tunnel, one night of a recorded snap. */
public final class SmallNight {
    /** The project's own settings and scenarios. */
    public static final Path CONFIG = Path.of("..", "config").toAbsolutePath().normalize();

    public static final String TEXT = """
            title = "A night"
            description = "For a test."
            settings_file = "%s/tunnel.toml"
            [time]
            start = 2014-01-27T12:00:00
            length = "1d"
            utc_offset = "-05:00"
            [weather]
            file = "%s/weather/cold-snap-2014-01.csv"
            """.formatted(CONFIG, CONFIG);

    private SmallNight() {}
}
