package rimeward.homie;

import org.jspecify.annotations.Nullable;
import rimeward.core.outlook.NightPlan;

/** What the tree shows beside decisions. Belongs to the device, and so to its thread. */
final class Told {
    final String version;
    int standing;
    String newestAlert = "";
    String answer = "nothing was asked since the service started";
    String acknowledged = "";
    String forecast = "{}";
    String lastNight = "no night has ended since the service started";
    long refused;

    @Nullable
    NightPlan plan;

    /** @param version the program's */
    Told(String version) {
        this.version = version;
    }
}
