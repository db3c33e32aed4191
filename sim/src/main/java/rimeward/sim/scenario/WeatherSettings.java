package rimeward.sim.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rimeward.adapter.config.Kind;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.Misread;
import rimeward.adapter.config.TableReader;
import rimeward.sim.weather.ColumnMap;
import rimeward.sim.weather.ColumnMapBuilder;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;

/** Reads {@code [weather]}: a recorded file or a recipe. */
final class WeatherSettings {
    private static final List<String> QUANTITIES = List.of(
            "air",
            "lowest-air",
            "highest-air",
            "dew-point",
            "humidity",
            "wind",
            "pressure",
            "sea-level-pressure",
            "cloud",
            "radiation");

    /** Altitude of Hallin Rigg on the sheet of a real upland county; the place itself is invented. */
    private static final Place USUAL_PLACE = new Place(54.6, -2.6, 260);

    private WeatherSettings() {}

    /** What is read is relative to the scenario's folder. */
    static Optional<WeatherChoice> read(TableReader table, Path folder, long seed) {
        Optional<Place> place = place(table);
        if (table.has("recipe")) {
            return recipe(table, place.orElse(USUAL_PLACE), seed);
        }
        String file = table.get("file", Kinds.text());
        Optional<TableReader> columns = table.findTable("columns");
        if (columns.isEmpty()) {
            Path path = folder.resolve(file);
            return table.whenSound(() -> place.<WeatherChoice>map(where -> new WeatherChoice.Placed(path, where))
                    .orElse(new WeatherChoice.SelfDescribed(path)));
        }
        if (place.isEmpty()) {
            table.fault("columns", "needs the place, for the sun", "add latitude_deg, longitude_deg and altitude_m");
        }
        Optional<ColumnMap> map = columns(columns.get());
        return table.whenSound(
                () -> new WeatherChoice.Mapped(folder.resolve(file), map.orElseThrow(), place.orElseThrow()));
    }

    private static Optional<Place> place(TableReader table) {
        if (!table.has("latitude_deg") && !table.has("longitude_deg") && !table.has("altitude_m")) {
            return Optional.empty();
        }
        double latitudeDeg = table.get("latitude_deg", Kinds.number(-90, 90));
        double longitudeDeg = table.get("longitude_deg", Kinds.number(-180, 180));
        double altitudeM = table.get("altitude_m", Kinds.number(-430, 4500));
        return table.whenSound(() -> new Place(latitudeDeg, longitudeDeg, altitudeM));
    }

    private static Optional<WeatherChoice> recipe(TableReader table, Place place, long seed) {
        Map<String, Recipe> recipes = Map.of(
                "upland-winter", Recipe.uplandWinter(place, 0, 1, seed),
                "mild-and-damp", Recipe.mildAndDamp(place, 0, 1, seed));
        Recipe base = table.get("recipe", Kinds.word(new java.util.TreeMap<>(recipes)));
        double meanC = table.celsius("mean", -30, 30, base.meanAirC());
        double frontK = table.get("front_spread_K", Kinds.number(0, 8), base.frontSpreadK());
        double swingK = table.get("clear_swing_K", Kinds.number(0, 20), base.clearSwingK());
        double dewK = table.get("dew_depression_K", Kinds.number(0, 15), base.dewDepressionK());
        double cloud = table.get("cloud_fraction", Kinds.number(0, 1), base.cloudFraction());
        double windMPerS = table.get("wind_m_per_s", Kinds.number(0, 15), base.windMPerS());
        return table.whenSound(() ->
                new WeatherChoice.Made(new Recipe(place, 0, 1, seed, meanC, frontK, swingK, dewK, cloud, windMPerS)));
    }

    private static Optional<ColumnMap> columns(TableReader table) {
        ColumnMapBuilder map = ColumnMap.builder();
        // The zone comes first: the builder reads times with it.
        table.find("zone", told(map::zone));
        table.find("time", told(map::time));
        for (String quantity : QUANTITIES) {
            table.find(quantity, told(text -> map.column(quantity, text)));
        }
        if (table.has("only")) {
            table.list("only", told(map::only));
        }
        if (table.has("missing")) {
            table.list("missing", told(map::missing));
        }
        table.find("assume_wind", told(text -> map.assume("wind", text)));
        table.find("assume_cloud", told(text -> map.assume("cloud", text)));
        table.find("longest_gap", Kinds.duration()).ifPresent(gap -> map.longestGapS((int) gap.toSeconds()));
        table.find("separator", told(text -> map.separator(text.charAt(0))));
        return table.whenSound(map::build);
    }

    /** Hands a text on to the importer's builder, whose refusal becomes a fault of the key. */
    private static Kind<Boolean> told(java.util.function.Consumer<String> builder) {
        return new Kind<>("text in quotes", true, value -> {
            if (!(value instanceof String text)) {
                throw new Misread("must be text in quotes", "put it in double quotes");
            }
            try {
                builder.accept(text);
                return true;
            } catch (IllegalArgumentException e) {
                throw new Misread("is refused: " + e.getMessage(), "see config/weather/README.md");
            }
        });
    }
}
