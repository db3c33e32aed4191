package rimeward.sizing;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import rimeward.site.Tariff;

/**
 * A stretch of weather as far as heating goes. Sunshine and what the ground stores are left out: a real season takes less.
 *
 * @param days from its first reading to its last
 * @param missingH hours within, of which nothing is known and nothing counted
 * @param belowFloorKh degree-hours of outside air below the floor, K·h
 * @param belowHeldKh the same below what the controller holds, K·h: what is paid for
 * @param pricedKh those, each at the price of its hour, money·K·h/kWh
 * @param lowestC coldest reading, °C
 * @param lowestEpochS when that was
 */
public record Season(
        double days,
        double missingH,
        double belowFloorKh,
        double belowHeldKh,
        double pricedKh,
        double lowestC,
        long lowestEpochS) {
    /** Gaps up to this long are bridged by a straight line, s, as the simulator does. */
    static final long BRIDGED_S = 3 * 3600;

    /** Prices may change within the hour, so it is looked at so often, s. */
    private static final long PRICE_STEP_S = 900;

    /** From here on the weather may stand for a winter. Own choice. */
    private static final double WINTER_DAYS = 90;

    private static final double S_PER_H = 3600;
    private static final double S_PER_DAY = 86_400;
    private static final double W_PER_KW = 1000;

    static Season of(AirCourse course, double floorC, double heldC, Tariff tariff, ZoneId zone) {
        double missingH = 0;
        Sum sum = new Sum(floorC, heldC, tariff, zone);
        int lowest = 0;
        for (int i = 1; i < course.size(); i++) {
            lowest = course.airC(i) < course.airC(lowest) ? i : lowest;
            long lengthS = course.epochS(i) - course.epochS(i - 1);
            if (lengthS > BRIDGED_S) {
                missingH += lengthS / S_PER_H;
            } else {
                sum.add(course.epochS(i - 1), course.airC(i - 1), lengthS, course.airC(i));
            }
        }
        return new Season(
                course.spanS() / S_PER_DAY,
                missingH,
                sum.floorKh,
                sum.heldKh,
                sum.pricedKh,
                course.airC(lowest),
                course.epochS(lowest));
    }

    /** Whether it may be told as a winter, and not as a spell of weather. */
    public boolean isWinter() {
        return days >= WINTER_DAYS;
    }

    /** Heat over the whole stretch, kWh. */
    public double kWh(double lossWPerK) {
        return lossWPerK * belowHeldKh / W_PER_KW;
    }

    /** What it costs, money. */
    public double cost(double lossWPerK) {
        return lossWPerK * pricedKh / W_PER_KW;
    }

    private static final class Sum {
        private final double floorC;
        private final double heldC;
        private final Tariff tariff;
        private final ZoneId zone;
        private double floorKh;
        private double heldKh;
        private double pricedKh;

        Sum(double floorC, double heldC, Tariff tariff, ZoneId zone) {
            this.floorC = floorC;
            this.heldC = heldC;
            this.tariff = tariff;
            this.zone = zone;
        }

        void add(long startS, double fromC, long lengthS, double toC) {
            floorKh += DegreeHours.belowKh(fromC, toC, floorC, lengthS / S_PER_H);
            if (fromC >= heldC && toC >= heldC) {
                return;
            }
            double slopeCPerS = (toC - fromC) / lengthS;
            for (long s = 0; s < lengthS; s += PRICE_STEP_S) {
                long stepS = Math.min(PRICE_STEP_S, lengthS - s);
                double atC = fromC + slopeCPerS * s;
                double kh = DegreeHours.belowKh(atC, atC + slopeCPerS * stepS, heldC, stepS / S_PER_H);
                heldKh += kh;
                pricedKh += kh == 0 ? 0 : kh * tariff.pricePerKWh(minuteOfDay(startS + s + stepS / 2));
            }
        }

        private int minuteOfDay(long epochS) {
            ZonedDateTime local = Instant.ofEpochSecond(epochS).atZone(zone);
            return local.getHour() * 60 + local.getMinute();
        }
    }
}
