package rimeward.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rimeward.alert.Alert;
import rimeward.alert.AlertSlot;

/** Which alerts stand, by what was told. From any thread. */
public final class StandingAlerts {
    private final Map<String, StandingAlert> standing = new LinkedHashMap<>();

    /** What stood when an earlier run ended; its words are in the record, see {@link #remember}. */
    public synchronized void resume(List<AlertSlot> slots) {
        for (AlertSlot slot : slots) {
            if (slot.raised()) {
                String id = Alert.id(slot.kind(), slot.subject(), slot.number());
                standing.putIfAbsent(
                        id,
                        new StandingAlert(
                                id,
                                slot.kind(),
                                slot.subject(),
                                slot.number(), // made of the time of day at which it was raised
                                slot.kind().title() + ".",
                                slot.acknowledged()));
            }
        }
    }

    /** What was told before this run, oldest first: the words of what still stands. */
    public synchronized void remember(List<Alert> told) {
        for (Alert alert : told) {
            boolean says = alert.change() == Alert.Change.RAISED || alert.change() == Alert.Change.REPEATED;
            if (says) {
                standing.computeIfPresent(alert.id(), (id, before) -> before.saying(alert.text()));
            }
        }
    }

    /** Takes note of what is told. */
    public synchronized void told(Alert alert) {
        switch (alert.change()) {
            case RAISED, REPEATED ->
                standing.merge(
                        alert.id(),
                        new StandingAlert(
                                alert.id(),
                                alert.kind(),
                                alert.subject(),
                                alert.at().wall().epochS(),
                                alert.text(),
                                false),
                        (before, now) -> before.saying(now.text()));
            case ACKNOWLEDGED -> standing.computeIfPresent(alert.id(), (id, before) -> before.known());
            case CLEARED -> standing.remove(alert.id());
        }
    }

    /** The worst first; of equals the newest. */
    public synchronized List<StandingAlert> all() {
        List<StandingAlert> all = new ArrayList<>(standing.values());
        all.sort(Comparator.<StandingAlert, Enum<?>>comparing(
                        alert -> alert.kind().severity(), Comparator.comparingInt(Enum::ordinal))
                .thenComparing(
                        Comparator.comparingLong(StandingAlert::sinceEpochS).reversed())
                .thenComparing(StandingAlert::incident));
        return all;
    }
}
