package rimeward.port;

import java.util.List;
import java.util.function.Consumer;
import rimeward.alert.Alert;

/** Alerts that are to be sent and are not known to have arrived, oldest first. They are safe here before anybody is told of them. */
public interface Outbox {
    /**
     * An alert and its place.
     *
     * @param number rises from one alert to the next and never comes again
     */
    record Entry(long number, Alert alert) {}

    /**
     * Asks for the oldest that are not sent. Never blocks and never throws.
     *
     * @param most at most so many
     * @param answer called once, on another thread or at once; an empty list where all are sent
     */
    void ask(int most, Consumer<List<Entry>> answer);

    /**
     * It has arrived, and need not be sent again. Never blocks and never throws.
     *
     * @param epochMs when, time of day
     */
    void sent(Entry entry, long epochMs);
}
