package rimeward.record;

import java.time.LocalDate;
import java.util.List;

/**
 * From local noon to local noon.
 *
 * @param evening the day on which it began
 * @param bench lowest believed inside temperature as it was read, °C
 * @param outside lowest believed outside temperature, °C
 * @param seenS how much of it the controller was there, s
 * @param wetS how long the wettest believed humidity was at or above where the dryer is asked for, s
 * @param cost by the site's tariff, in its currency; from meters where there are, else from rated power
 * @param litresEstimated the dryer's water at its rated collection, L: rather too much on a cold night
 * @param alerts how many were raised
 */
public record Night(
        LocalDate evening,
        Lowest bench,
        Lowest outside,
        double seenS,
        double wetS,
        List<Use> machines,
        double cost,
        double litresEstimated,
        int alerts) {
    public Night {
        machines = List.copyOf(machines);
    }

    /** What all machines took together, kWh. */
    public double kWh() {
        return machines.stream().mapToDouble(Use::kWh).sum();
    }

    /** What one machine took. */
    public record Use(String machine, double kWh, int starts) {
        public String toText() {
            return machine + ":" + kWh + ":" + starts;
        }

        /** @throws IllegalArgumentException if it is not what {@link #toText} writes */
        public static Use parse(String text) {
            String[] parts = text.split(":", -1);
            if (parts.length != 3) {
                throw new IllegalArgumentException("\"" + text + "\" is not machine:kWh:starts");
            }
            return new Use(parts[0], Double.parseDouble(parts[1]), Integer.parseInt(parts[2]));
        }
    }
}
