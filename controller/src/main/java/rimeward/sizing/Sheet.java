package rimeward.sizing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import rimeward.site.Tunnel;

/**
 * The heat-loss sheet.
 *
 * @param house the tunnel with what is done already
 * @param neededW to hold at the design temperature, W
 * @param heater what to buy for that and a margin
 * @param savings what each further measure would do by itself
 * @param tunnel what all this implies for the settings
 */
public record Sheet(
        Request request,
        House house,
        Loss loss,
        double neededW,
        HeaterPlan heater,
        Winter winter,
        List<Saving> savings,
        Tunnel tunnel) {
    public Sheet {
        savings = List.copyOf(savings);
    }

    /**
     * Works it out.
     *
     * @throws Refused where inputs contradict each other
     */
    public static Sheet of(Request request, String file, Weather weather) throws Refused {
        Season season = Season.of(
                weather.course(), request.inputs().of(Input.FLOOR), request.heldC(), request.tariff(), request.zone());
        return of(request, new Winter.Known(file, weather, season));
    }

    /**
     * The same with what is known of the winter already, or nothing: of what heating took in the tunnel's own record, a measure saves its
     * share.
     *
     * @throws Refused where inputs contradict each other
     */
    public static Sheet of(Request request, Winter winter) throws Refused {
        request.requireSense();
        House house = request.house();
        Loss loss = house.loss();
        return new Sheet(
                request,
                house,
                loss,
                request.neededW(loss),
                HeaterPlan.of(request.wantedW(loss), request.circuit()),
                winter,
                savings(request, house, winter),
                TunnelLines.of(house, loss, request.inputs().of(Input.ALTITUDE)));
    }

    private static List<Saving> savings(Request request, House house, Winter winter) {
        List<Saving> savings = new ArrayList<>();
        for (Measure measure : EnumSet.allOf(Measure.class)) {
            boolean has = request.done().contains(measure) || measure.isPartOf(request.cover(), request.ends());
            if (!has) {
                savings.add(saving(request, house, winter, measure));
            }
        }
        return savings;
    }

    private static Saving saving(Request request, House house, Winter winter, Measure measure) {
        Loss after = request.after(house, measure).loss();
        double amount = measure.amount(house);
        double cost = amount * request.inputs().of(measure.price());
        HeaterPlan heater = HeaterPlan.of(request.wantedW(after), request.circuit());
        return new Saving(measure, amount, cost, after, heater, gain(winter, house.loss(), after, cost));
    }

    private static Gain gain(Winter winter, Loss before, Loss after, double cost) {
        double lessWPerK = before.totalWPerK() - after.totalWPerK();
        if (winter instanceof Winter.Known known) {
            return new Gain.Known(known.season().kWh(lessWPerK), known.season().cost(lessWPerK), cost);
        }
        if (winter instanceof Winter.Recorded recorded) {
            double share = lessWPerK / before.totalWPerK();
            return new Gain.Known(share * recorded.kWh(), share * recorded.money(), cost);
        }
        return new Gain.Unknown();
    }

    /** Down to which outside temperature this much heat holds what is to be held, °C; without any margin. */
    public double holdsDownToC(double heatW) {
        return request.heldC() - heatW / loss.totalWPerK();
    }

    /** How many of the inputs were assumed. */
    public long assumed() {
        return request.inputs().each().values().stream()
                .filter(Sourced::isAssumed)
                .count();
    }
}
