package rimeward.core.outlook;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Locale;
import rimeward.core.tunnel.Figure;
import rimeward.site.Site;

/**
 * What a plan said of a night, short enough to be kept for ever, so that the night can hold it to account.
 *
 * @param evening the day on which the night began, as the record counts nights: from noon to noon
 * @param floorC the floor that it was made for, °C
 * @param beforeKWh what the machines had taken of that night before the plan was made, kWh
 * @param beforeCost the same in money
 * @param beforeLitres the same of the dryer's water, L
 */
public record PlanPromise(
        LocalDate evening,
        long madeEpochS,
        double floorC,
        Figure lowestOutsideC,
        Figure lowestBenchC,
        Figure kWh,
        Figure cost,
        Figure litres,
        double chanceCold,
        boolean guess,
        double beforeKWh,
        double beforeCost,
        double beforeLitres) {
    private static final String VERSION = "plan1";
    private static final int NOON_H = 12;
    private static final int PARTS = 18;

    /** A plan for a night of which this much has been taken already. */
    public static PlanPromise of(NightPlan plan, Site site, double beforeKWh, double beforeCost, double beforeLitres) {
        ZonedDateTime local = Instant.ofEpochSecond(plan.madeEpochS()).atZone(site.zone());
        LocalDate day = local.toLocalDate();
        return new PlanPromise(
                local.getHour() >= NOON_H ? day : day.minusDays(1),
                plan.madeEpochS(),
                site.floorC(),
                plan.lowestOutsideC(),
                plan.lowestBenchC(),
                plan.kWh(),
                plan.cost(),
                plan.litres(),
                plan.chanceCold(),
                plan.basis().isGuess(),
                beforeKWh,
                beforeCost,
                beforeLitres);
    }

    /** What the whole night was to take, from its noon on, kWh. */
    public double nightKWh() {
        return beforeKWh + kWh.value();
    }

    /** One line; temperatures in °C, with four decimals. */
    public String toText() {
        return String.format(
                Locale.ROOT,
                "%s %s %d %.4f %s %s %s %s %s %.6f %s %.4f %.4f %.4f",
                VERSION,
                evening,
                madeEpochS,
                floorC,
                text(lowestOutsideC),
                text(lowestBenchC),
                text(kWh),
                text(cost),
                text(litres),
                chanceCold,
                guess ? "guess" : "known",
                beforeKWh,
                beforeCost,
                beforeLitres);
    }

    private static String text(Figure figure) {
        return String.format(Locale.ROOT, "%.4f %.4f", figure.value(), figure.standardError());
    }

    /** @throws IllegalArgumentException if it is not what {@link #toText} writes */
    public static PlanPromise parse(String text) {
        String[] part = text.split(" ", -1);
        if (part.length != PARTS + 1 || !part[0].equals(VERSION)) {
            throw new IllegalArgumentException("\"" + text + "\" is no plan that this program knows");
        }
        try {
            return new PlanPromise(
                    LocalDate.parse(part[1]),
                    Long.parseLong(part[2]),
                    Double.parseDouble(part[3]),
                    figure(part, 4),
                    figure(part, 6),
                    figure(part, 8),
                    figure(part, 10),
                    figure(part, 12),
                    Double.parseDouble(part[14]),
                    part[15].equals("guess"),
                    Double.parseDouble(part[16]),
                    Double.parseDouble(part[17]),
                    Double.parseDouble(part[18]));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"" + text + "\" names no day", e);
        }
    }

    private static Figure figure(String[] part, int at) {
        return new Figure(Double.parseDouble(part[at]), Double.parseDouble(part[at + 1]));
    }
}
