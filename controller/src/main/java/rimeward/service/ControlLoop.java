package rimeward.service;

import java.util.List;
import java.util.Optional;
import rimeward.alert.Alert;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlState;
import rimeward.core.ControlStep;
import rimeward.core.Stepped;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Tick;
import rimeward.port.Courier;
import rimeward.port.ForecastSource;
import rimeward.port.Journal;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;

/**
 * One thread runs this, and nothing else touches its state. Each tick: wait, latch everything once, step, switch, record,
 * tell. It cannot see whether the doors lead to a tunnel or to a simulation.
 */
public final class ControlLoop {
    private final ControlStep control;
    private final AlertBoard board;
    private final Ticker ticker;
    private final Sensors sensors;
    private final ForecastSource forecasts;
    private final Relays relays;
    private final Journal journal;
    private final StateKeeper keeper;
    private final Courier courier;

    public ControlLoop(
            ControlStep control,
            AlertBoard board,
            Ticker ticker,
            Sensors sensors,
            ForecastSource forecasts,
            Relays relays,
            Journal journal,
            StateKeeper keeper,
            Courier courier) {
        this.control = control;
        this.board = board;
        this.ticker = ticker;
        this.sensors = sensors;
        this.forecasts = forecasts;
        this.relays = relays;
        this.journal = journal;
        this.keeper = keeper;
        this.courier = courier;
    }

    /** Runs until there are no more ticks. */
    public void run() {
        run(control.start());
    }

    /** The same from a state that was saved. */
    public void run(ControlState from) {
        ControlState state = from;
        for (Optional<Tick> tick = ticker.next(); tick.isPresent(); tick = ticker.next()) {
            Frame frame = new Frame(tick.get(), sensors.latch());
            Stepped stepped = control.step(state, frame, forecasts.latest(tick.get()));
            relays.close(stepped.outcome().guarded().closed());
            List<Alert> alerts = board.after(stepped.outcome());
            journal.record(stepped, alerts);
            keeper.after(stepped, board, !alerts.isEmpty());
            for (Alert alert : alerts) {
                courier.tell(alert);
            }
            state = stepped.next();
        }
    }
}
