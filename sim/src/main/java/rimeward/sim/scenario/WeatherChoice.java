package rimeward.sim.scenario;

import java.nio.file.Path;
import rimeward.sim.weather.ColumnMap;
import rimeward.sim.weather.Imported;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;
import rimeward.sim.weather.Span;
import rimeward.sim.weather.WeatherFileException;
import rimeward.sim.weather.WeatherImporter;
import rimeward.sim.weather.WeatherSeries;

/** Where the weather comes from. */
sealed interface WeatherChoice {

    /** The weather of at least this span. */
    WeatherSeries of(Span span) throws WeatherFileException;

    /** The same from another file, read in the same way as far as a file's way was stated. */
    default WeatherChoice from(Path other) {
        return new SelfDescribed(other);
    }

    /** A file that explains itself. */
    record SelfDescribed(Path file) implements WeatherChoice {
        @Override
        public WeatherSeries of(Span span) throws WeatherFileException {
            return WeatherImporter.read(file, span).series();
        }
    }

    /** A file whose columns explain themselves, at a place stated in the scenario. */
    record Placed(Path file, Place place) implements WeatherChoice {
        @Override
        public WeatherSeries of(Span span) throws WeatherFileException {
            return WeatherImporter.read(file, place, span).series();
        }

        @Override
        public WeatherChoice from(Path other) {
            return new Placed(other, place);
        }
    }

    /** Any other table. */
    record Mapped(Path file, ColumnMap map, Place place) implements WeatherChoice {
        @Override
        public WeatherSeries of(Span span) throws WeatherFileException {
            Imported imported = WeatherImporter.read(file, map, place, span);
            return imported.series();
        }

        @Override
        public WeatherChoice from(Path other) {
            return new Mapped(other, map, place);
        }
    }

    /** Made weather; start and length of the recipe are set by the span. */
    record Made(Recipe recipe) implements WeatherChoice {
        private static final long DAY_S = 86_400;

        @Override
        public WeatherSeries of(Span span) {
            long days = (span.untilEpochS() - span.fromEpochS()) / DAY_S + 2;
            return new Recipe(
                            recipe.place(),
                            span.fromEpochS(),
                            (int) days,
                            recipe.seed(),
                            recipe.meanAirC(),
                            recipe.frontSpreadK(),
                            recipe.clearSwingK(),
                            recipe.dewDepressionK(),
                            recipe.cloudFraction(),
                            recipe.windMPerS())
                    .make();
        }
    }
}
