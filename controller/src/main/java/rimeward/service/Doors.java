package rimeward.service;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.alert.Alert;
import rimeward.alert.Door;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.port.Courier;
import rimeward.port.ForecastSource;
import rimeward.port.Journal;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The doors as the loop uses them. None of them should ever throw; should one do so all the same, the loop goes on with what a dead
 * door gives, and the failure is remembered until the door works again. For the loop's thread.
 */
final class Doors {
    private static final Logger LOG = LoggerFactory.getLogger(Doors.class);

    private final Sensors sensors;
    private final ForecastSource forecasts;
    private final Relays relays;
    private final Journal journal;
    private final Courier courier;
    private final Grower grower;
    private final Senses nothing;
    private final Set<Door> failing = EnumSet.noneOf(Door.class);

    Doors(
            Site site,
            Sensors sensors,
            ForecastSource forecasts,
            Relays relays,
            Journal journal,
            Courier courier,
            Grower grower) {
        this.sensors = sensors;
        this.forecasts = forecasts;
        this.relays = relays;
        this.journal = journal;
        this.courier = courier;
        this.grower = grower;
        nothing = new Senses(
                Collections.nCopies(site.sensors().size(), new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER)),
                Collections.nCopies(site.machines().size(), Reading.NO_ANSWER),
                Signal.LOST,
                Signal.LOST);
    }

    Senses latch() {
        try {
            Senses senses = sensors.latch();
            works(Door.SENSORS);
            return senses;
        } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError e) {
            fails(Door.SENSORS, e);
            return nothing;
        }
    }

    Outlook forecast(Tick now) {
        try {
            Outlook outlook = forecasts.latest(now);
            works(Door.FORECAST);
            return outlook;
        } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError e) {
            fails(Door.FORECAST, e);
            return Outlook.NONE;
        }
    }

    /** Whether the forecast source will look for a new one. */
    boolean askForecastAnew() {
        try {
            return forecasts.askAnew();
        } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError e) {
            fails(Door.FORECAST, e);
            return false;
        }
    }

    /** What the grower asks for, mostly nothing. */
    List<Order> orders() {
        try {
            List<Order> taken = List.copyOf(grower.orders().take());
            works(Door.ORDERS);
            return taken;
        } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError e) {
            fails(Door.ORDERS, e);
            return List.of();
        }
    }

    void answer(Answer answer) {
        pass(Door.ORDERS, () -> grower.answers().accept(answer));
    }

    void close(RelaySet set) {
        pass(Door.RELAYS, () -> relays.close(set));
    }

    void record(Stepped stepped, List<Alert> alerts) {
        pass(Door.JOURNAL, () -> journal.record(stepped, alerts));
    }

    void keep(Runnable keeping) {
        pass(Door.KEEP, keeping);
    }

    void tell(List<Alert> alerts) {
        if (!alerts.isEmpty()) {
            pass(Door.COURIER, () -> alerts.forEach(courier::tell));
        }
    }

    private void pass(Door door, Runnable through) {
        try {
            through.run();
            works(door);
        } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError e) {
            fails(door, e);
        }
    }

    /** The log gets the cause, once; the grower is told by the alert board. */
    private void fails(Door door, Throwable why) {
        if (failing.add(door)) {
            LOG.warn("the part called {} fails", door.subject(), why);
        }
    }

    private void works(Door door) {
        if (!failing.isEmpty()) {
            failing.remove(door);
        }
    }

    /** By what it threw, or by its own account. */
    boolean isFailing(Door door) {
        if (failing.contains(door)) {
            return true;
        }
        return switch (door) {
            case RELAYS -> relays.isFailing();
            case JOURNAL -> journal.isFailing();
            case COURIER -> courier.isFailing();
            case SENSORS, FORECAST, KEEP, ORDERS -> false;
        };
    }

    boolean isAnyFailing() {
        return !failing.isEmpty() || relays.isFailing() || journal.isFailing() || courier.isFailing();
    }

    int timesRecordSetAside() {
        return journal.timesSetAside();
    }
}
