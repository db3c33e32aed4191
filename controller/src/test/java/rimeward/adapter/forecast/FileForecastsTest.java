package rimeward.adapter.forecast;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that somebody else writes: missing, half written, wrong, put right. */
class FileForecastsTest {
    private final FakeClock clock = new FakeClock(Samples.ISSUED_S);
    private int written;

    @TempDir
    Path folder;

    private Path file;
    private FileForecasts forecasts;

    @BeforeEach
    void choose() {
        file = folder.resolve("forecast.csv");
        forecasts = new FileForecasts(file, clock::wall);
    }

    @Test
    void aFileIsLookedAtEachMinute() throws IOException {
        write(Samples.bytes("night.csv"));
        assertThat(look().usualMs()).isEqualTo(clock.nowMs() + 60_000);
        assertThat(forecasts.newest().orElseThrow().points()).hasSize(3);
        write(Samples.bytes("compact.json"));
        look();
        assertThat(forecasts.newest().orElseThrow().points()).hasSize(7);
        assertThat(forecasts.trouble()).isEmpty();
    }

    @Test
    void oneThatIsHalfWrittenIsNoErrorAtOnce() throws IOException {
        write(Samples.bytes("night.csv"));
        look();
        byte[] whole = Samples.bytes("compact.json");
        for (int end = 0; end < whole.length; end += whole.length / 5) {
            write(Arrays.copyOf(whole, end));
            look();
            assertThat(forecasts.trouble()).isEmpty();
            assertThat(forecasts.newest()).isPresent();
        }
        write(whole);
        look();
        assertThat(forecasts.newest().orElseThrow().points()).hasSize(7);
    }

    @Test
    void oneThatStaysWrongIsToldAndForgivenOnceItIsRight() throws IOException {
        write("time,air °C\n2026-01-10T15:00Z,cold\n".getBytes(UTF_8));
        look();
        assertThat(forecasts.trouble()).isEmpty();
        look();
        assertThat(forecasts.trouble().orElseThrow())
                .startsWith("There is no forecast from the file " + file
                        + ". What stands in it is no forecast: line 2: air is" + " \"cold\", which is no number.");
        write(Samples.bytes("night.csv"));
        look();
        assertThat(forecasts.trouble()).isEmpty();
        assertThat(forecasts.newest()).isPresent();
    }

    @Test
    void oneThatIsNotThereIsToldFromTheSecondLook() throws IOException {
        look();
        assertThat(forecasts.trouble()).isEmpty();
        look();
        assertThat(forecasts.trouble().orElseThrow())
                .contains("It is not there.")
                .contains("[forecast]");
        write(Samples.bytes("night.csv"));
        look();
        assertThat(forecasts.trouble()).isEmpty();
        Files.delete(file);
        look();
        look();
        assertThat(forecasts.newest()).isPresent(); // what it said still holds
        assertThat(forecasts.trouble().orElseThrow()).contains("no newer one comes. It is not there.");
    }

    @Test
    void aFileThatNobodyChangesAnyMoreGrowsOld() throws IOException {
        write(Samples.bytes("night.csv"));
        look();
        clock.pass(20);
        look();
        assertThat(forecasts.newest()).isEmpty();
        assertThat(forecasts.trouble().orElseThrow()).contains("ended").contains("It has no newer one.");
    }

    @Test
    void aFolderAndAFileTooLargeAreRefused() throws IOException {
        Files.createDirectory(file);
        look();
        look();
        assertThat(forecasts.trouble().orElseThrow()).contains("it is no ordinary file");
        Files.delete(file);
        write(new byte[5_000_000]);
        look();
        look();
        assertThat(forecasts.trouble().orElseThrow()).contains("longer than 1048576 bytes");
    }

    @Test
    void withoutAClockTheFileWaits() throws IOException {
        write(Samples.bytes("night.csv"));
        clock.isSet(false);
        look();
        assertThat(forecasts.newest()).isEmpty();
        assertThat(forecasts.trouble().orElseThrow()).contains("clock is not set");
        clock.isSet(true);
        look();
        assertThat(forecasts.newest()).isPresent();
    }

    private Source.Due look() {
        return forecasts.attempt(clock.nowMs());
    }

    /** With a time of its own, as if a minute had passed since the last. */
    private void write(byte[] bytes) throws IOException {
        Files.write(file, bytes);
        written++;
        Files.setLastModifiedTime(file, FileTime.fromMillis(Samples.ISSUED_S * 1000 - 3_600_000 + written * 60_000L));
    }
}
