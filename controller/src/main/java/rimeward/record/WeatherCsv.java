package rimeward.record;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.site.Site;

/**
 * The outside of a record as a weather file that explains itself, for a replay. Frames whose clock was not trusted, or stands before
 * the row above, are left out. Wind and cloud are not measured: one assumed value each stands in every row.
 */
public final class WeatherCsv {
    private static final long MINUTE_MS = 60_000;

    private final Site site;
    private final double windMPerS;
    private final double cloudFraction;
    private long lastMs = Long.MIN_VALUE;

    public WeatherCsv(Site site, double windMPerS, double cloudFraction) {
        this.site = site;
        this.windMPerS = windMPerS;
        this.cloudFraction = cloudFraction;
    }

    public String header(double latitudeDeg, double longitudeDeg, double altitudeM) {
        return "# Recorded by Rimeward at " + site.name() + ": outside air and humidity as the sensor told them.\n"
                + "# Assumed, not measured: wind and cloud, one value for all rows.\n"
                + "# place: latitude " + plain(latitudeDeg) + ", longitude " + plain(longitudeDeg) + ", altitude "
                + plain(altitudeM) + " m\n"
                + "time,air °C,humidity %,wind m/s,cloud fraction\n";
    }

    /**
     * The frame's row, if it has one.
     *
     * @throws IllegalArgumentException if the frame has not the site's number of sensors
     */
    public Optional<String> row(FrameRow frame) {
        int sensors = frame.frame().senses().sensors().size();
        if (sensors != site.sensors().size()) {
            throw new IllegalArgumentException("frame " + frame.frame().tick().number() + " of the record has "
                    + sensors + " sensors, the settings " + site.sensors().size()
                    + "; name the settings that the service ran with");
        }
        var wall = frame.frame().tick().wall();
        boolean early = lastMs != Long.MIN_VALUE && wall.epochMs() < lastMs + MINUTE_MS;
        if (!wall.trusted() || early) {
            return Optional.empty();
        }
        for (int i = 0; i < site.sensors().size(); i++) {
            OptionalDouble airC = frame.believedAirC(i);
            OptionalDouble rhPercent = frame.believedRhPercent(i);
            if (!site.sensors().get(i).place().isInside() && airC.isPresent() && rhPercent.isPresent()) {
                lastMs = wall.epochMs();
                return Optional.of(row(lastMs, airC.getAsDouble(), rhPercent.getAsDouble()));
            }
        }
        return Optional.empty();
    }

    private String row(long atMs, double airC, double rhPercent) {
        return String.join(
                        ",",
                        Instant.ofEpochSecond(Math.floorDiv(atMs, 1000L)).toString(),
                        plain(airC),
                        plain(rhPercent),
                        plain(windMPerS),
                        plain(cloudFraction))
                + "\n";
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).toPlainString();
    }
}
