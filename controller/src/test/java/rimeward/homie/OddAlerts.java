package rimeward.homie;

import java.util.ArrayList;
import java.util.List;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.site.Site;

/** Alerts of all kinds, from their beginning to their end. */
final class OddAlerts {
    private OddAlerts() {}

    static List<Alert> each(Site site) {
        List<Alert> all = new ArrayList<>();
        boolean trusted = false;
        for (AlertKind kind : AlertKind.values()) {
            trusted = !trusted;
            for (Alert.Change change : Alert.Change.values()) {
                Tick at = new Tick(9, 9000, new WallTime(1_764_000_009_000L, trusted));
                all.add(of(kind, site.id(), change, at, "Something \"odd\"\n\u00e4\u68da.\\"));
            }
        }
        return all;
    }

    static Alert of(AlertKind kind, String subject, Alert.Change change, Tick at, String text) {
        return new Alert(Alert.id(kind, subject, 1), kind, subject, change, at, text);
    }
}
