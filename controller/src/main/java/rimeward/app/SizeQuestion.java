package rimeward.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rimeward.adapter.config.SiteSettings;
import rimeward.site.Site;
import rimeward.site.Tariff;
import rimeward.sizing.Basis;
import rimeward.sizing.Cover;
import rimeward.sizing.Input;
import rimeward.sizing.Inputs;
import rimeward.sizing.Measure;
import rimeward.sizing.Refused;
import rimeward.sizing.Request;
import rimeward.sizing.Sheet;
import rimeward.sizing.Weather;
import rimeward.sizing.WeatherText;

/** Puts together what the grower typed, the settings, a weather file and assumptions, in this order of belief. */
final class SizeQuestion {
    private static final int MINUTES_A_DAY = 1440;

    private final Inputs inputs;
    private @Nullable Tariff settledTariff;
    private ZoneId zone = ZoneOffset.UTC;
    private @Nullable Path weatherFile;
    private @Nullable Weather weather;

    SizeQuestion(Inputs inputs) {
        this.inputs = inputs;
    }

    /** Takes floor, held band, altitude, circuit and prices from the settings. */
    void settings(Path file) {
        Site site = SiteSettings.read(file);
        zone = site.zone();
        settledTariff = site.tariff();
        say(Input.FLOOR, site.floorC(), file);
        say(Input.HOLD_ABOVE, site.targets().guardMarginK() + site.targets().differentialK() / 2, file);
        say(Input.ALTITUDE, site.tunnel().altitudeM(), file);
        say(Input.VOLTAGE, site.circuit().voltageV(), file);
        say(Input.FUSE, site.circuit().fuseA(), file);
        say(Input.CONTINUOUS, site.circuit().continuousFactor(), file);
        say(Input.OTHER_LOAD, site.circuit().otherLoadW(), file);
    }

    private void say(Input input, double value, Path file) {
        inputs.say(input, value, Basis.SETTINGS, "settings " + file);
    }

    /** Reads the weather; its coldest reading is what the heater is made for, unless that was said. */
    void weather(Path file) {
        weatherFile = file;
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            Weather read = WeatherText.read(lines.lines().iterator());
            weather = read;
            inputs.say(Input.OUTSIDE, read.course().lowestC(), Basis.WEATHER, "coldest reading of " + file);
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
    }

    private static String unreadable(Exception e) {
        return "cannot be read (" + e.getMessage() + "); name a file that you may read";
    }

    /** The sheet. A currency or price that was typed goes before the settings' own. */
    Sheet sheet(@Nullable String coverWord, @Nullable String endsWord, List<String> done, @Nullable String currency)
            throws Refused {
        Cover cover = cover("--cover", coverWord, Cover.SINGLE_FILM);
        Cover ends = cover("--ends", endsWord, cover);
        losses(cover, coverWord, ends, endsWord);
        if (!inputs.has(Input.EAVES)) {
            inputs.find(Input.WIDTH)
                    .ifPresent(width -> inputs.say(
                            Input.HEIGHT,
                            width.value() / 2,
                            Basis.ASSUMED,
                            "half the width: hoops that are half circles"));
        }
        require(Input.WIDTH);
        require(Input.LENGTH);
        if (inputs.has(Input.EAVES)) {
            require(Input.HEIGHT);
        }
        Set<Measure> measures = measures(done);
        Tariff tariff = tariff(currency);
        Request request = new Request(inputs, cover, ends, measures, tariff, zone);
        return weather == null || weatherFile == null
                ? Sheet.of(request)
                : Sheet.of(request, weatherFile.toString(), weather);
    }

    private void require(Input input) {
        if (!inputs.has(input)) {
            inputs.refuse(input.option() + " is missing: " + input.remedy() + ", and give it in metres");
        }
    }

    private Cover cover(String option, @Nullable String word, Cover without) {
        if (word == null) {
            return without;
        }
        return Cover.of(word).orElseGet(() -> {
            inputs.refuse(option + " is \"" + word + "\"; it must be one of " + Cover.words());
            return without;
        });
    }

    /** A loss that was typed goes for ends too that nobody named. */
    private void losses(Cover cover, @Nullable String coverWord, Cover ends, @Nullable String endsWord) {
        Basis coverBasis = coverWord == null ? Basis.ASSUMED : Basis.TABLE;
        inputs.say(
                Input.COVER_LOSS, cover.lossWPerM2K(), coverBasis, "--cover " + cover.word() + ": " + cover.source());
        double asRoofWPerM2K = inputs.of(Input.COVER_LOSS);
        if (endsWord == null) {
            inputs.say(Input.ENDS_LOSS, asRoofWPerM2K, Basis.ASSUMED, "--ends: as roof and sides");
        } else {
            inputs.say(
                    Input.ENDS_LOSS, ends.lossWPerM2K(), Basis.TABLE, "--ends " + ends.word() + ": " + ends.source());
        }
    }

    private Set<Measure> measures(List<String> words) {
        Set<Measure> measures = EnumSet.noneOf(Measure.class);
        for (String word : words) {
            Measure.of(word.strip())
                    .ifPresentOrElse(
                            measures::add,
                            () -> inputs.refuse("--insulation names \"" + word + "\"; it knows " + Measure.wordList()
                                    + ", parted by commas"));
        }
        return measures;
    }

    /** The prices; asked last, for it goes on only while nothing was refused. */
    private Tariff tariff(@Nullable String currency) throws Refused {
        boolean typed = inputs.has(Input.PRICE);
        Tariff settled = settledTariff;
        if (currency != null && !currency.matches("\\p{L}{1,8}|\\p{Sc}")) {
            inputs.refuse("--currency is \"" + currency + "\"; write one to eight letters, as EUR, or one sign");
        }
        if (settled != null && !typed) {
            if (currency != null && !currency.equals(settled.currency())) {
                inputs.refuse("--currency is " + currency + " and the settings' prices are in " + settled.currency()
                        + "; leave it out, or give --price-per-kWh in " + currency);
            }
            inputs.say(
                    Input.PRICE,
                    Math.max(0, meanPerKWh(settled)),
                    Basis.SETTINGS,
                    "settings: the day's mean; each hour is counted at its own price");
        }
        inputs.assumeTheRest();
        inputs.throwIfRefused();
        if (settled != null && !typed) {
            return settled;
        }
        String usual = settled == null ? "GBP" : settled.currency();
        return new Tariff.Flat(currency == null ? usual : currency, inputs.of(Input.PRICE));
    }

    private static double meanPerKWh(Tariff tariff) {
        double sum = 0;
        for (int minute = 0; minute < MINUTES_A_DAY; minute++) {
            sum += tariff.pricePerKWh(minute);
        }
        return sum / MINUTES_A_DAY;
    }
}
