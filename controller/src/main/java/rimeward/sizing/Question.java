package rimeward.sizing;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rimeward.site.Site;
import rimeward.site.Tariff;

/** Puts together what the grower typed, the settings, a weather file and assumptions, in this order of belief. */
public final class Question {
    private static final int MINUTES_A_DAY = 1440;

    private final Inputs inputs;
    private @Nullable Tariff settledTariff;
    private ZoneId zone = ZoneOffset.UTC;
    private String weatherFile = "";
    private @Nullable Weather weather;
    private Winter winter = new Winter.Unknown();

    public Question(Inputs inputs) {
        this.inputs = inputs;
    }

    /** Takes floor, held band, altitude, circuit and prices from the settings. */
    public void settings(Site site, String from) {
        zone = site.zone();
        settledTariff = site.tariff();
        say(Input.FLOOR, site.floorC(), from);
        say(Input.HOLD_ABOVE, site.targets().guardMarginK() + site.targets().differentialK() / 2, from);
        say(Input.ALTITUDE, site.tunnel().altitudeM(), from);
        say(Input.VOLTAGE, site.circuit().voltageV(), from);
        say(Input.FUSE, site.circuit().fuseA(), from);
        say(Input.CONTINUOUS, site.circuit().continuousFactor(), from);
        say(Input.OTHER_LOAD, site.circuit().otherLoadW(), from);
    }

    private void say(Input input, double value, String from) {
        inputs.say(input, value, Basis.SETTINGS, from);
    }

    /** What is known of the winter: a weather file's coldest reading is what the heater is made for, unless that was said. */
    public void weather(String file, Weather read) {
        weather = read;
        weatherFile = file;
        inputs.say(Input.OUTSIDE, read.course().lowestC(), Basis.WEATHER, "coldest reading of " + file);
    }

    /** What is known of it without a weather file. */
    public void recorded(Winter.Recorded nights) {
        winter = nights;
    }

    /** The sheet. A currency or price that was typed goes before the settings' own. */
    public Sheet sheet(
            @Nullable String coverWord, @Nullable String endsWord, List<String> done, @Nullable String currency)
            throws Refused {
        Cover cover = cover("cover", coverWord, Cover.SINGLE_FILM);
        Cover ends = cover("ends", endsWord, cover);
        losses(cover, coverWord, ends, endsWord);
        if (!inputs.has(Input.EAVES)) {
            inputs.find(Input.WIDTH)
                    .filter(width ->
                            width.value() <= Input.WIDTH.most()) // else it was refused, and that is fault enough
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
        return weather == null ? Sheet.of(request, winter) : Sheet.of(request, weatherFile, weather);
    }

    private void require(Input input) {
        if (!inputs.has(input)) {
            inputs.refuse(inputs.name(input.key()) + " is missing: " + input.remedy() + ", and give it in metres");
        }
    }

    private Cover cover(String key, @Nullable String word, Cover without) {
        if (word == null) {
            return without;
        }
        return Cover.of(word).orElseGet(() -> {
            inputs.refuse(inputs.name(key) + " is \"" + word + "\"; it must be one of " + Cover.words());
            return without;
        });
    }

    /** A loss that was typed goes for ends too that nobody named. */
    private void losses(Cover cover, @Nullable String coverWord, Cover ends, @Nullable String endsWord) {
        Basis coverBasis = coverWord == null ? Basis.ASSUMED : Basis.TABLE;
        inputs.say(
                Input.COVER_LOSS,
                cover.lossWPerM2K(),
                coverBasis,
                inputs.name("cover") + " " + cover.word() + ": " + cover.source());
        double asRoofWPerM2K = inputs.of(Input.COVER_LOSS);
        if (endsWord == null) {
            inputs.say(Input.ENDS_LOSS, asRoofWPerM2K, Basis.ASSUMED, inputs.name("ends") + ": as roof and sides");
        } else {
            inputs.say(
                    Input.ENDS_LOSS,
                    ends.lossWPerM2K(),
                    Basis.TABLE,
                    inputs.name("ends") + " " + ends.word() + ": " + ends.source());
        }
    }

    private Set<Measure> measures(List<String> words) {
        Set<Measure> measures = EnumSet.noneOf(Measure.class);
        for (String word : words) {
            Measure.of(word.strip())
                    .ifPresentOrElse(
                            measures::add,
                            () -> inputs.refuse(inputs.name("insulation") + " names \"" + word + "\"; it knows "
                                    + Measure.wordList() + ", parted by commas"));
        }
        return measures;
    }

    /** The prices; asked last, for it goes on only while nothing was refused. */
    private Tariff tariff(@Nullable String currency) throws Refused {
        boolean typed = inputs.has(Input.PRICE);
        Tariff settled = settledTariff;
        if (currency != null && !currency.matches("\\p{L}{1,8}|\\p{Sc}")) {
            inputs.refuse(inputs.name("currency") + " is \"" + currency
                    + "\"; write one to eight letters, as EUR, or one sign");
        }
        if (settled != null && !typed) {
            if (currency != null && !currency.equals(settled.currency())) {
                inputs.refuse(inputs.name("currency") + " is " + currency + " and the settings' prices are in "
                        + settled.currency() + "; leave it out, or give " + inputs.name("price_per_kWh") + " in "
                        + currency);
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
