package rimeward.record;

import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What machines draw: what a meter shows, and without one what the plate says while the relay is closed. */
public final class Draw {
    private Draw() {}

    /**
     * One machine's, W.
     *
     * @param closed relays up to this frame: between two kept ones none changes, and a meter shows at the end of it what was drawn
     */
    public static double powerW(Site site, RelaySet closed, Frame frame, int machine) {
        Reading shown = frame.senses().powersW().get(machine);
        if (shown instanceof Reading.Value value) {
            return value.value();
        }
        return closed.has(machine) ? site.machines().get(machine).ratedW() : 0;
    }

    /** All machines' together, W. */
    public static double totalW(Site site, RelaySet closed, Frame frame) {
        double sumW = 0;
        for (int i = 0; i < site.machines().size(); i++) {
            sumW += powerW(site, closed, frame, i);
        }
        return sumW;
    }
}
