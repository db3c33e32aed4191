package rimeward.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import rimeward.sizing.Inputs;
import rimeward.sizing.Refused;
import rimeward.sizing.Weather;
import rimeward.sizing.WeatherText;

/** The weather file that a sheet goes by. */
final class SizeWeather {
    private SizeWeather() {}

    /** Empty where it cannot be used; why is told with the other refusals. */
    static Optional<Weather> read(Path file, Inputs inputs) {
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return Optional.of(WeatherText.read(lines.lines().iterator()));
        } catch (Refused e) {
            e.faults().forEach(fault -> inputs.refuse(file + ": " + fault));
        } catch (NoSuchFileException e) {
            inputs.refuse(file + ": there is no such weather file; check its name and where it is looked for");
        } catch (UncheckedIOException e) {
            boolean encoding = e.getCause() instanceof CharacterCodingException;
            inputs.refuse(file + ": " + (encoding ? "is not UTF-8 text; save it as UTF-8" : unreadable(e)));
        } catch (IOException e) {
            inputs.refuse(file + ": " + unreadable(e));
        }
        return Optional.empty();
    }

    private static String unreadable(Exception e) {
        return "cannot be read (" + e.getMessage() + "); name a file that you may read";
    }
}
