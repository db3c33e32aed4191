package rimeward.service;

import java.util.List;
import java.util.Optional;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.alert.Door;
import rimeward.alert.Troubles;
import rimeward.core.ControlState;
import rimeward.core.ControlStep;
import rimeward.core.Stepped;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Tick;
import rimeward.port.Courier;
import rimeward.port.ForecastSource;
import rimeward.port.Health;
import rimeward.port.Journal;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;
import rimeward.site.Site;

/**
 * One thread runs this, and nothing else touches its state. Each tick: wait, latch everything once, obey, step, switch, record,
 * tell. It cannot see whether the doors lead to a tunnel or to a simulation.
 */
public final class ControlLoop {
    private final AlertBoard board;
    private final OrderDesk desk;
    private final Ticker ticker;
    private final Doors doors;
    private final StateKeeper keeper;
    private final Health health;
    private final Troubles troubles;

    /** Without anybody who asks for anything, on a computer that nothing ails. */
    public ControlLoop(
            Site site,
            ControlStep control,
            AlertBoard board,
            Ticker ticker,
            Sensors sensors,
            ForecastSource forecasts,
            Relays relays,
            Journal journal,
            StateKeeper keeper,
            Courier courier) {
        this(
                site,
                control,
                board,
                ticker,
                sensors,
                forecasts,
                relays,
                journal,
                keeper,
                courier,
                Grower.silent(),
                Health.sound());
    }

    /** @param site as the settings have it; a floor that was asked for since stands with the grower */
    public ControlLoop(
            Site site,
            ControlStep control,
            AlertBoard board,
            Ticker ticker,
            Sensors sensors,
            ForecastSource forecasts,
            Relays relays,
            Journal journal,
            StateKeeper keeper,
            Courier courier,
            Grower grower,
            Health health) {
        this.health = health;
        this.board = board;
        this.ticker = ticker;
        this.keeper = keeper;
        doors = new Doors(site, sensors, forecasts, relays, journal, courier, grower);
        desk = new OrderDesk(site, control, board, doors, grower.standing());
        troubles = new Own();
    }

    /** What doors, clock and computer are found to be at this tick. */
    private final class Own implements Troubles {
        @Override
        public boolean isFailing(Door door) {
            return doors.isFailing(door);
        }

        @Override
        public boolean isAnyFailing() {
            return doors.isAnyFailing();
        }

        @Override
        public int timesRecordSetAside() {
            return doors.timesRecordSetAside();
        }

        @Override
        public boolean hasClockJumped() {
            return ticker.hasWallJumped();
        }

        @Override
        public boolean isTickLate() {
            return ticker.isLate();
        }

        @Override
        public boolean isDiskNearlyFull() {
            return health.isDiskNearlyFull();
        }

        @Override
        public boolean isVoltageLow() {
            return health.isVoltageLow();
        }
    }

    /** Runs until there are no more ticks. */
    public void run() {
        run(desk.control().start());
    }

    /** The same from a state that was saved. What goes wrong behind a door is survived; what goes wrong in control is thrown. */
    public void run(ControlState from) {
        ControlState state = from;
        for (Optional<Tick> tick = ticker.next(); tick.isPresent(); tick = ticker.next()) {
            Frame frame = new Frame(tick.get(), doors.latch());
            boolean ordered = desk.isAsked();
            ControlState asked = ordered ? desk.obey(state, tick.get()) : state;
            Outlook outlook = desk.outlook(doors.forecast(tick.get()), tick.get());
            Stepped stepped = desk.control().step(asked, frame, outlook);
            doors.close(stepped.outcome().guarded().closed());
            List<Alert> alerts = board.after(stepped.outcome(), troubles);
            doors.record(stepped, alerts);
            doors.keep(() -> keeper.after(stepped, board, desk.standing(), ordered || !alerts.isEmpty()));
            doors.tell(alerts);
            state = stepped.next();
        }
    }
}
