package rimeward.app;

import static rimeward.app.SizeWords.money;
import static rimeward.app.SizeWords.three;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalDouble;
import rimeward.sizing.Gain;
import rimeward.sizing.HeaterPlan;
import rimeward.sizing.Saving;
import rimeward.sizing.Season;
import rimeward.sizing.Sheet;
import rimeward.sizing.Stages;
import rimeward.sizing.Weather;
import rimeward.sizing.Winter;

/** What the weather would cost, and what each measure would save of it. */
final class SizeWinter {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final StringBuilder text = new StringBuilder();
    private final Sheet sheet;
    private final String currency;

    private SizeWinter(Sheet sheet) {
        this.sheet = sheet;
        currency = sheet.request().tariff().currency();
    }

    static String of(Sheet sheet) {
        SizeWinter told = new SizeWinter(sheet);
        told.weather();
        told.measures();
        return told.text.toString();
    }

    private void weather() {
        heading("Winter");
        if (!(sheet.winter() instanceof Winter.Known known)) {
            line("kWh, money and payback are not known: give the outside air of a winter with --weather FILE");
            return;
        }
        Season season = known.season();
        Weather weather = known.weather();
        line("by %s: %s", known.file(), weather.form().words());
        line(
                "%s days, coldest %s °C on %s; %s K·h below the floor, %s K·h below the %s °C held",
                three(season.days()),
                Plain.number(season.lowestC()),
                moment(season.lowestEpochS()),
                three(season.belowFloorKh()),
                three(season.belowHeldKh()),
                Plain.number(sheet.request().heldC()));
        if (weather.unmeasured() + weather.impossible() > 0 || season.missingH() > 0) {
            line(
                    "not measured in %d of its rows, impossible in %d; gaps of more than 3 h, %s h in all, are not counted",
                    weather.unmeasured(), weather.impossible(), three(season.missingH()));
        }
        double lossWPerK = sheet.loss().totalWPerK();
        line(
                "heat: %s W/K × %s K·h = %s kWh, costs %s %s",
                three(lossWPerK),
                three(season.belowHeldKh()),
                three(season.kWh(lossWPerK)),
                money(season.cost(lossWPerK)),
                currency);
        line("Sunshine, and warmth stored by day, are left out: a real heater takes less, and measures save less.");
        if (!season.isWinter()) {
            line(
                    "THIS IS NO WINTER, only %s days: kWh, money and payback below are for such a spell.",
                    three(season.days()));
        }
    }

    private String moment(long epochS) {
        ZoneId zone = sheet.request().zone();
        String clock = zone.equals(ZoneOffset.UTC) ? "UTC" : "by the clock of " + zone;
        return Instant.ofEpochSecond(epochS).atZone(zone).format(MINUTE) + " " + clock;
    }

    private void measures() {
        heading("What would help: each by itself, material at the prices above");
        line(
                "%-17s %9s %9s  %-22s %9s %9s  %s",
                "--insulation",
                "costs " + currency,
                "loss W/K",
                "heater stages then",
                "saves kWh",
                currency,
                "pays back after");
        for (Saving saving : sheet.savings()) {
            line(
                    "%-17s %9s %9s  %-22s %s",
                    saving.measure().word(),
                    money(saving.cost()),
                    three(saving.after().totalWPerK()),
                    heater(saving.heater()),
                    gain(saving.gain()));
        }
        for (Saving saving : sheet.savings()) {
            line(
                    "%s: %s %s, %s (%s)",
                    saving.measure().word(),
                    three(saving.amount()),
                    saving.measure().isByArea() ? "m²" : "m",
                    saving.measure().words(),
                    saving.measure().source());
        }
        line("Together they save less than the sum: name those you choose in --insulation, and look again.");
    }

    private static String heater(HeaterPlan plan) {
        Stages stages = plan.fits() ? plan.fitting() : plan.wanted();
        if (!(stages instanceof Stages.Some some)) {
            return "more than plugs give";
        }
        String sum = Plain.number(some.totalW()) + " W in " + some.eachW().size();
        return plan.fits() ? sum : sum + " (too much)";
    }

    private String gain(Gain gain) {
        if (!(gain instanceof Gain.Known known)) {
            return String.format(Locale.ROOT, "%9s %9s  %s", "?", "?", "? (no --weather)");
        }
        return String.format(
                Locale.ROOT, "%9s %9s  %s", three(known.kWh()), money(known.money()), payback(known.paysBackAfter()));
    }

    private String payback(OptionalDouble after) {
        if (after.isEmpty()) {
            return "never: it saves no money";
        }
        boolean winter =
                sheet.winter() instanceof Winter.Known known && known.season().isWinter();
        double times = after.getAsDouble();
        return (times < 0.1 ? "less than 0.1" : SizeWords.tenth(times)) + (winter ? " winters" : " such spells");
    }

    private void heading(String heading) {
        text.append('\n').append(heading).append('\n');
    }

    private void line(String format, Object... parts) {
        text.append("  ")
                .append(String.format(Locale.ROOT, format, parts).stripTrailing())
                .append('\n');
    }
}
