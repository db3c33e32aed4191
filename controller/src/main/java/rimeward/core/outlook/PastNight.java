package rimeward.core.outlook;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rimeward.core.tunnel.Figure;
import rimeward.site.Site;

/**
 * What ours took of a night that was, from dusk to after sunrise, and what plainer ways would have taken of it; short enough to be kept for ever.
 *
 * @param evening the day on which the night began, as the record counts nights: from noon to noon
 * @param kWh what the machines took, kWh
 * @param cost what that cost, in the tariff's currency
 */
public record PastNight(LocalDate evening, double kWh, double cost, Alternatives others) {
    private static final String VERSION = "past1";
    private static final int HEAD = 5;
    private static final int EACH = 11;

    /** One line; temperatures in °C, with four decimals. */
    public String toText() {
        StringBuilder text = new StringBuilder(
                String.format(Locale.ROOT, "%s %s %.4f %.4f %d", VERSION, evening, kWh, cost, others.tunnelNights()));
        for (Alternative each : others.all()) {
            text.append(' ').append(each.way().id());
            for (Figure figure :
                    List.of(each.kWh(), each.cost(), each.lowestBenchC(), each.savedKWh(), each.savedCost())) {
                text.append(String.format(Locale.ROOT, " %.4f %.4f", figure.value(), figure.standardError()));
            }
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException if it is not what {@link #toText} writes */
    public static PastNight parse(String text) {
        String[] part = text.split(" ", -1);
        if (part.length < HEAD || (part.length - HEAD) % EACH != 0 || !part[0].equals(VERSION)) {
            throw new IllegalArgumentException("\"" + text + "\" is no past night that this program knows");
        }
        try {
            List<Alternative> all = new ArrayList<>();
            for (int at = HEAD; at < part.length; at += EACH) {
                all.add(alternative(part, at));
            }
            return new PastNight(
                    LocalDate.parse(part[1]),
                    Double.parseDouble(part[2]),
                    Double.parseDouble(part[3]),
                    new Alternatives(true, Integer.parseInt(part[4]), all));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"" + text + "\" names no day", e);
        }
    }

    private static Alternative alternative(String[] part, int at) {
        return new Alternative(
                Alternative.Way.named(part[at]),
                figure(part, at + 1),
                figure(part, at + 3),
                figure(part, at + 5),
                figure(part, at + 7),
                figure(part, at + 9));
    }

    private static Figure figure(String[] part, int at) {
        return new Figure(Double.parseDouble(part[at]), Double.parseDouble(part[at + 1]));
    }

    /** For people: what ours took, what others would have taken, and which would have let the plants get too cold. */
    public String inWords(Site site) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "From dusk to sunrise the machines took %.1f kWh, %.2f %s. By the model that is %s.",
                kWh,
                cost,
                site.tariff().currency(),
                others.all().stream().map(Alternative::saved).collect(Collectors.joining(", "))));
        for (Alternative each : others.all()) {
            if (each.lowestBenchC().value() < site.floorC()) {
                text.append(' ').append(each.letDown(site));
            }
        }
        if (others.tunnelNights() == 0) {
            text.append(" The tunnel is assumed, not learned yet.");
        }
        return text.toString();
    }
}
