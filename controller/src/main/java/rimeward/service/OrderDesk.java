package rimeward.service;

import java.util.List;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlState;
import rimeward.core.ControlStep;
import rimeward.core.order.Answer;
import rimeward.core.order.FloorOrder;
import rimeward.core.order.HandedForecast;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Order;
import rimeward.core.order.Standing;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Tick;
import rimeward.site.Site;

/** Carries out what the grower asks for, within the site's limits, and answers each order. For the loop's thread. */
final class OrderDesk {
    private final Site settings;
    private final AlertBoard board;
    private final Doors doors;
    private ControlStep control;
    private Standing standing;
    private List<Order> asked = List.of();

    /**
     * @param settings the site as its file has it
     * @param standing what was ordered before; a floor that the site does not take is left aside
     */
    OrderDesk(Site settings, ControlStep control, AlertBoard board, Doors doors, Standing standing) {
        this.settings = settings;
        this.control = control;
        this.board = board;
        this.doors = doors;
        this.standing = standing;
        if (!standing.equals(Standing.NONE)) {
            hold(standing);
        }
    }

    /** Control as it is now asked for. */
    ControlStep control() {
        return control;
    }

    Standing standing() {
        return standing;
    }

    /** What to plan by. */
    Outlook outlook(Outlook source, Tick now) {
        return HandedForecast.used(standing.forecast(), source, now.elapsedMs());
    }

    /** Fetches what is asked for; whether there is any. */
    boolean isAsked() {
        asked = doors.orders();
        return !asked.isEmpty();
    }

    /** Carries out what was fetched; the state that control goes on from. */
    ControlState obey(ControlState was, Tick now) {
        ControlState state = was;
        for (int i = 0; i < asked.size(); i++) {
            Order order = asked.get(i);
            if (i >= OrderQueue.MOST_A_TICK) {
                doors.answer(new Answer(order, false, "Too much was asked for at once. Ask again."));
            } else if (order instanceof Order.StandDown standDown) {
                StandDownOrder service = new StandDownOrder(settings, standDown);
                doors.answer(service.answer(state.guard().standDowns().machines()));
                state = service.place() < 0 ? state : state.withStandDown(service.place(), standDown.forS(), now);
            } else {
                doors.answer(answer(order, now));
            }
        }
        return state;
    }

    private Answer answer(Order order, Tick now) {
        if (order instanceof Order.SetFloor floor) {
            return setFloor(floor);
        }
        if (order instanceof Order.HandForecast forecast) {
            return handed(forecast, now);
        }
        if (order instanceof Order.KnowTunnel known) {
            return known(known);
        }
        if (order instanceof Order.Acknowledge seen) {
            return acknowledged(seen);
        }
        return planned(order);
    }

    // ---- the floor

    private Answer setFloor(Order.SetFloor order) {
        double floorC = order.floorC();
        if (!settings.takesFloor(floorC)) {
            return new Answer(order, false, FloorWords.refused(settings, floorC));
        }
        boolean asInSettings = floorC == settings.floorC();
        hold(standing.withFloor(
                asInSettings ? FloorOrder.AS_IN_SETTINGS : new FloorOrder.Asked(floorC, Restart.floorMark(settings))));
        return new Answer(order, true, FloorWords.taken(settings, floorC));
    }

    /** The machines stay the same, so control goes on from its state as it is. */
    private void hold(Standing from) {
        standing = from;
        Site site = from.floor() instanceof FloorOrder.Asked asked ? settings.withFloor(asked.floorC()) : settings;
        if (from.tunnel() instanceof KnownTunnel.Learned learned) {
            site = LearnedTunnel.beside(settings, learned).map(site::withTunnel).orElse(site);
        }
        control = control.at(site);
        board.nowAt(site);
    }

    // ---- the tunnel

    private Answer known(Order.KnowTunnel order) {
        boolean taken = LearnedTunnel.beside(settings, order.tunnel()).isPresent();
        if (taken) {
            hold(standing.withTunnel(order.tunnel()));
        }
        return new Answer(order, taken, LearnedTunnel.inWords(settings, order.tunnel(), taken));
    }

    // ---- the forecast

    private Answer handed(Order.HandForecast order, Tick now) {
        if (!(order.outlook() instanceof Outlook.Night night)) {
            standing = standing.withForecast(HandedForecast.NONE);
            return new Answer(order, true, "The forecast that was handed over is no longer used.");
        }
        HandedForecast.Night handed = new HandedForecast.Night(night, now.elapsedMs());
        if (handed.lastsS() <= 0) {
            return new Answer(order, false, "The night of this forecast is over. Hand over the coming one's.");
        }
        standing = standing.withForecast(handed);
        return new Answer(order, true, ForecastWords.taken(handed));
    }

    private Answer planned(Order order) {
        return doors.askForecastAnew()
                ? new Answer(order, true, "The forecast is asked for anew, and goes into use when it comes.")
                : new Answer(
                        order,
                        true,
                        "The night is planned anew by what is known here: no forecast's source can be asked. You may hand one over.");
    }

    // ---- alerts

    private Answer acknowledged(Order.Acknowledge order) {
        return board.acknowledge(order.alertId())
                ? new Answer(order, true, "Acknowledged: " + order.alertId() + ".")
                : new Answer(order, false, "No such alert stands any more: " + order.alertId() + ".");
    }
}
