package rimeward.service;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.zip.CRC32;
import rimeward.core.ControlState;
import rimeward.core.order.FloorOrder;
import rimeward.core.order.HandedForecast;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Standing;
import rimeward.core.reading.WallTime;
import rimeward.record.SavedState;
import rimeward.site.Site;

/**
 * Where control takes up again: its state, and the monotonic time it counts on from.
 *
 * @param elapsedMs monotonic time of the first tick, ms
 */
public record Restart(ControlState state, long elapsedMs) {
    /** What the settings say of floor and plants, as a fingerprint: a floor that was asked for holds only against the same. */
    static long floorMark(Site settings) {
        return mark(settings.floorC() + " " + settings.plants());
    }

    /** What the settings say of the tunnel, as a fingerprint: what was learned holds only beside the same. */
    public static long tunnelMark(Site settings) {
        return mark(settings.tunnel().toString());
    }

    private static long mark(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(UTF_8));
        return sum.getValue();
    }

    /**
     * What was ordered before, as far as it still stands: a floor falls with the settings that it was asked against, and a forecast
     * when nobody knows how old it has become.
     */
    public static Standing standing(SavedState saved, Site settings, WallTime now) {
        Standing all = saved.standing();
        boolean floorFalls = all.floor() instanceof FloorOrder.Asked asked && !stands(asked, settings);
        boolean tunnelFalls =
                all.tunnel() instanceof KnownTunnel.Learned learned && learned.settings() != tunnelMark(settings);
        Standing known = tunnelFalls ? all.withTunnel(KnownTunnel.AS_IN_SETTINGS) : all;
        Standing kept = floorFalls ? known.withFloor(FloorOrder.AS_IN_SETTINGS) : known;
        return isTimed(saved, now) ? kept : kept.withForecast(HandedForecast.NONE);
    }

    private static boolean isTimed(SavedState saved, WallTime now) {
        return saved.wall().trusted() && now.trusted();
    }

    private static boolean stands(FloorOrder.Asked asked, Site settings) {
        return asked.settings() == floorMark(settings) && settings.takesFloor(asked.floorC());
    }

    /** How long nobody was there, ms: by the wall clock where both ends are trusted, else nothing, so that rests begin anew. */
    public static long outageMs(SavedState saved, WallTime now) {
        return isTimed(saved, now) ? Math.max(0, now.epochMs() - saved.wall().epochMs()) : 0;
    }
}
