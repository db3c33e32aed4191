package rimeward.sim.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import rimeward.sim.scenario.BadInput;

/**
 * The recorded weather that winters are made from: a folder of self-describing files, as {@code config/weather}. Daily files tell how days
 * follow one another, hourly ones how hours do.
 *
 * @param snaps one for each daily file, a row a day: lowest air °C, highest air °C, wind m/s, cloud 0…1
 * @param nights one for each hourly file, a row an hour: air °C, dew point °C, wind m/s, cloud 0…1
 */
public record RecordedWeather(List<double[][]> snaps, List<double[][]> nights) {
    private static final List<String> BY_DAY = List.of("lowest-air °C", "highest-air °C", "wind m/s", "cloud fraction");
    private static final List<String> BY_HOUR = List.of("air °C", "dew-point °C", "wind m/s", "cloud tenths");
    private static final double[] BY_DAY_UNITS = {1, 1, 1, 1};
    private static final double[] BY_HOUR_UNITS = {1, 1, 1, 0.1};

    /** @throws BadInput if the folder does not hold at least one file of each kind */
    public static RecordedWeather of(Path folder) throws BadInput {
        List<double[][]> snaps = new ArrayList<>();
        List<double[][]> nights = new ArrayList<>();
        for (Path file : files(folder)) {
            List<String> lines = lines(file);
            List<String> names =
                    lines.isEmpty() ? List.of() : Arrays.asList(lines.get(0).split(","));
            if (names.containsAll(BY_DAY)) {
                snaps.add(rows(file, lines, names, BY_DAY, BY_DAY_UNITS));
            } else if (names.containsAll(BY_HOUR)) {
                nights.add(rows(file, lines, names, BY_HOUR, BY_HOUR_UNITS));
            }
        }
        if (snaps.isEmpty() || nights.isEmpty()) {
            throw new BadInput("the folder " + folder + " holds " + snaps.size() + " daily and " + nights.size()
                    + " hourly files of recorded weather, and winters are made from at least one of each; name"
                    + " Rimeward's config/weather with --weather");
        }
        return new RecordedWeather(List.copyOf(snaps), List.copyOf(nights));
    }

    private static List<Path> files(Path folder) throws BadInput {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
        } catch (IOException e) {
            throw new BadInput(
                    "the folder of recorded weather " + folder + " cannot be read (" + e
                            + "); name Rimeward's config/weather with --weather",
                    e);
        }
    }

    private static List<String> lines(Path file) throws BadInput {
        try {
            return Files.readAllLines(file).stream()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new BadInput("the recorded weather " + file + " cannot be read (" + e + "); mend or remove it", e);
        }
    }

    private static double[][] rows(
            Path file, List<String> lines, List<String> names, List<String> wanted, double[] units) throws BadInput {
        double[][] rows = new double[lines.size() - 1][wanted.size()];
        for (int i = 0; i < rows.length; i++) {
            String line = lines.get(i + 1);
            String[] cells = line.split(",", -1);
            for (int j = 0; j < wanted.size(); j++) {
                try {
                    rows[i][j] = Double.parseDouble(cells[names.indexOf(wanted.get(j))]) * units[j];
                } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
                    throw new BadInput(
                            "the recorded weather " + file + " has no number for " + wanted.get(j) + " in \"" + line
                                    + "\"; mend or remove it",
                            e);
                }
            }
        }
        return rows;
    }
}
