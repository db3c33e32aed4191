package rimeward.adapter.web;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import rimeward.core.order.Order;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.json.JsonText;
import rimeward.json.NoJson;
import rimeward.site.Degrees;
import rimeward.site.Site;

/** Reads what the grower asks for on the page and hands it on; what became of it is told with the next state. */
final class OrderDoor {
    /** A limit shown in tenths may lie beside its true place by this, K. */
    private static final double HAIR_K = 0.051;

    private final Site site;
    private final Consumer<Order> orders;

    /** @param orders takes one without waiting */
    OrderDoor(Site site, Consumer<Order> orders) {
        this.site = site;
        this.orders = orders;
    }

    Response take(String text) {
        try {
            Json asked = JsonReader.read(text);
            List<Order> read = read(asked);
            read.forEach(orders);
            return Response.json(202, JsonText.of(Map.of("asked", true)));
        } catch (NoJson e) {
            return Response.refusal(422, "That is no order: " + e.why() + ".");
        } catch (IllegalArgumentException e) {
            return Response.refusal(422, "That is no order: " + e.getMessage() + ".");
        }
    }

    /** @throws IllegalArgumentException with the reason, where it is none */
    private List<Order> read(Json asked) {
        return switch (text(asked, "order")) {
            case "acknowledge" -> List.of(new Order.Acknowledge(text(asked, "incident")));
            case "floor" -> List.of(floor(number(asked, "airC")));
            case "standDown" -> standDown(asked, number(asked, "minutes"));
            case "return" -> standDown(asked, 0);
            case "planNow" -> List.of(new Order.PlanNow());
            default ->
                throw new IllegalArgumentException(
                        "what is known are acknowledge, floor, standDown, return and planNow");
        };
    }

    private Order floor(double floorC) {
        double leastC = site.lowestFloorC();
        double mostC = site.highestFloorC();
        if (!(floorC >= leastC - HAIR_K && floorC <= mostC + HAIR_K)) {
            Degrees degrees = site.degrees();
            throw new IllegalArgumentException("the plants and the hot limit leave a floor of " + degrees.text(leastC)
                    + " to " + degrees.text(mostC));
        }
        return new Order.SetFloor(StrictMath.max(leastC, StrictMath.min(mostC, floorC)));
    }

    /** One machine, or all where none is named: whoever works inside needs them all still. */
    private List<Order> standDown(Json asked, double minutes) {
        List<String> machines = asked.get("machine").isPresent() ? List.of(text(asked, "machine")) : site.machineIds();
        return machines.stream()
                .<Order>map(machine -> new Order.StandDown(machine, minutes * 60))
                .toList();
    }

    private static String text(Json asked, String name) {
        if (asked.get(name).orElse(null) instanceof Json.Text found) {
            return found.text();
        }
        throw new IllegalArgumentException("it lacks the text \"" + name + "\"");
    }

    private static double number(Json asked, String name) {
        if (asked.get(name).orElse(null) instanceof Json.Figure found) {
            return found.value();
        }
        throw new IllegalArgumentException("it lacks the number \"" + name + "\"");
    }
}
