package rimeward.broker;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.port.Outbox;

/** Alerts of the test's own making. */
final class Drawer implements Outbox {
    private final TreeMap<Long, Entry> unsent = new TreeMap<>();
    private long last;

    /** Raises the next one, and gives its text. */
    synchronized String raise() {
        last++;
        String text = "alert number " + last;
        Tick at = new Tick(last, last * 5000, new WallTime(last * 5000, true));
        unsent.put(
                last,
                new Entry(
                        last,
                        new Alert(
                                "sensor-doubted-" + last,
                                AlertKind.SENSOR_DOUBTED,
                                "sensor-" + last,
                                Alert.Change.RAISED,
                                at,
                                text)));
        return text;
    }

    @Override
    public synchronized void ask(int most, Consumer<List<Entry>> answer) {
        answer.accept(unsent.values().stream().limit(most).toList());
    }

    @Override
    public synchronized void sent(Entry entry, long epochMs) {
        unsent.remove(entry.number());
    }

    synchronized Set<Long> waiting() {
        return Set.copyOf(unsent.keySet());
    }
}
