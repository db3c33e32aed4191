package rimeward.service;

import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** One order to stand a machine down for service, or to bring it back, as this site understands it. */
final class StandDownOrder {
    private final Site site;
    private final Order.StandDown order;
    private final int place;

    StandDownOrder(Site site, Order.StandDown order) {
        this.site = site;
        this.order = order;
        place = site.machineIds().indexOf(order.machineId());
    }

    /** The machine's place in the site's order; negative where there is no such machine. */
    int place() {
        return place;
    }

    /** @param down machines that stand down already */
    Answer answer(RelaySet down) {
        if (place < 0) {
            return new Answer(
                    order,
                    false,
                    "No machine is called \"" + order.machineId() + "\". There are: "
                            + String.join(", ", site.machineIds()) + ".");
        }
        return new Answer(order, true, order.forS() > 0 ? stoodDown(down.with(place)) : back(down.has(place)));
    }

    private String back(boolean stoodDown) {
        return stoodDown
                ? order.machineId() + " is in use again. It starts when it is needed and has had its rest."
                : order.machineId() + " did not stand down, and is in use as before.";
    }

    private String stoodDown(RelaySet down) {
        return order.machineId() + " stands down for " + minutes() + " and then comes back by itself. A relay is no"
                + " isolation"
                + (site.stopState().has(place) ? ", and this one closes whenever the controller stops" : "")
                + ": unplug the machine before you touch it." + whatIsLeft(down);
    }

    private String minutes() {
        return (long) StrictMath.ceil(order.forS() / 60) + " min";
    }

    /** Said, and allowed: hands may be inside. */
    private String whatIsLeft(RelaySet down) {
        if (!site.heaterStages().minus(down).isEmpty()) {
            return "";
        }
        return site.dryerRelay().minus(down).isEmpty()
                ? " Nothing else gives heat: until then the plants are on their own."
                : " No heater is left: until then the dryer's heat is all there is.";
    }
}
