package rimeward.homie;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.WallTime;
import rimeward.site.Degrees;
import rimeward.site.Machine;
import rimeward.site.Messaging.Command;
import rimeward.site.Site;

/** What {@code set} topics mean: an order within its bounds, or why there is none. Belongs to the device. */
final class Commands {
    /** The longest of the simple ones is an alert's id, bytes. */
    static final int MOST_BYTES = 256;

    private static final Pattern ALERT_ID = Pattern.compile("[a-z0-9-]{1,200}");

    /** A limit told in tenths of a degree may lie beside its true place by this, K. */
    private static final double HAIR_K = 0.051;

    private final Site site;
    private final Degrees degrees;
    private final Set<Command> allowed;
    private long forecastIssuedS = Long.MIN_VALUE;

    Commands(Site site, Degrees degrees, Set<Command> allowed) {
        this.site = site;
        this.degrees = degrees;
        this.allowed = allowed;
    }

    /**
     * @param property node/property whose {@code set} was heard
     * @param wall time of day, by which a forecast's hours count
     */
    Order read(String property, byte[] payload, WallTime wall) throws Misheard {
        return switch (meant(property)) {
            case ACKNOWLEDGE -> acknowledge(Payload.text(payload, MOST_BYTES));
            case SET_FLOOR -> floor(Payload.text(payload, MOST_BYTES));
            case PLAN_NOW -> plan(Payload.text(payload, MOST_BYTES));
            case HAND_FORECAST -> forecast(Payload.text(payload, ForecastText.MOST_BYTES), wall);
            case STAND_DOWN -> standDown(machine(property).orElseThrow(), Payload.text(payload, MOST_BYTES));
        };
    }

    private Command meant(String property) throws Misheard {
        Command command = switch (property) {
            case "orders/acknowledge" -> Command.ACKNOWLEDGE;
            case "duty/floor" -> Command.SET_FLOOR;
            case "night/plan" -> Command.PLAN_NOW;
            case "night/forecast" -> Command.HAND_FORECAST;
            default -> {
                if (machine(property).isEmpty()) {
                    throw new Misheard(Payload.shown(property) + " cannot be set");
                }
                yield Command.STAND_DOWN;
            }
        };
        if (!allowed.contains(command)) {
            throw new Misheard("the settings do not allow to " + command.inWords()
                    + "; add it to commands of [mqtt] if it should be");
        }
        return command;
    }

    private Optional<Machine> machine(String property) {
        return site.machines().stream()
                .filter(machine -> property.equals(Tree.nodeOf(machine) + "/stand-down"))
                .findFirst();
    }

    private static Order acknowledge(String text) throws Misheard {
        if (!ALERT_ID.matcher(text).matches()) {
            throw new Misheard(Payload.shown(text) + " is no alert's id: letters a to z, digits and '-'");
        }
        return new Order.Acknowledge(text);
    }

    private Order floor(String text) throws Misheard {
        double floorC = degrees.toC(Payload.number(text));
        double leastC = site.lowestFloorC();
        double mostC = site.highestFloorC();
        if (!(floorC >= leastC - HAIR_K && floorC <= mostC + HAIR_K)) {
            throw new Misheard("a floor of " + Payload.shown(text) + " is none: the plants and the hot limit leave "
                    + degrees.text(leastC) + " to " + degrees.text(mostC));
        }
        return new Order.SetFloor(StrictMath.max(leastC, StrictMath.min(mostC, floorC)));
    }

    private static Order plan(String text) throws Misheard {
        if (!text.equals("now")) {
            throw new Misheard(Payload.shown(text) + " is not \"now\"");
        }
        return new Order.PlanNow();
    }

    private Order forecast(String text, WallTime wall) throws Misheard {
        return new Order.HandForecast(ForecastText.read(text, wall, forecastIssuedS));
    }

    /** An order went on; a forecast that was issued no later is not taken again. */
    void handedOn(Order order) {
        if (order instanceof Order.HandForecast hand && hand.outlook() instanceof Outlook.Night night) {
            forecastIssuedS = night.night();
        }
    }

    private static Order standDown(Machine machine, String text) throws Misheard {
        long forMin = Payload.whole(text);
        if (forMin < 0 || forMin > MachineNode.LONGEST_MIN) {
            throw new Misheard(machine.id() + " may stand down for 0 to " + MachineNode.LONGEST_MIN + " minutes, not "
                    + Payload.shown(text));
        }
        return new Order.StandDown(machine.id(), forMin * 60.0);
    }

    /** Topics below the device on which orders are heard; none where none is allowed. */
    List<String> filters() {
        return allowed.isEmpty() ? List.of() : List.of("+/+/set");
    }
}
