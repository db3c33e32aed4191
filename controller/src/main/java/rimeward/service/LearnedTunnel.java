package rimeward.service;

import java.util.Locale;
import java.util.Optional;
import rimeward.core.order.KnownTunnel;
import rimeward.site.Site;
import rimeward.site.Tunnel;

/** Whether control may go by a tunnel that was learned. */
final class LearnedTunnel {
    /** A loss farther than this from the settings' one is not believed: one of the two is wrong then. Own choice. */
    private static final double MOST_APART = 2;

    /** Below these shares of the settings' numbers, and above their inverse, the others are cut off. Own choice. */
    private static final double LEAST_SHARE = 0.5;

    private LearnedTunnel() {}

    /** The learned tunnel on the settings' ground; empty where it is too far from them, or is none at all. */
    static Optional<Tunnel> beside(Site settings, KnownTunnel.Learned learned) {
        Tunnel assumed = settings.tunnel();
        double apart = learned.heatLossWPerK() / assumed.heatLossWPerK();
        if (!(apart <= MOST_APART && 1 <= apart * MOST_APART)) { // written so that NaN is refused too
            return Optional.empty();
        }
        try {
            return Optional.of(assumed.with(
                    learned.heatLossWPerK(),
                    near(learned.airCapacityJPerK(), assumed.airCapacityJPerK()),
                    near(learned.massCapacityJPerK(), assumed.massCapacityJPerK()),
                    near(learned.massCouplingWPerK(), assumed.massCouplingWPerK())));
        } catch (IllegalArgumentException e) {
            return Optional.empty(); // no tunnel is like that
        }
    }

    private static double near(double learned, double assumed) {
        return StrictMath.max(LEAST_SHARE * assumed, StrictMath.min(assumed / LEAST_SHARE, learned));
    }

    /** For the log. */
    static String inWords(Site settings, KnownTunnel.Learned learned, boolean taken) {
        String both = String.format(
                Locale.ROOT,
                "%d nights teach that the tunnel loses %.0f W/K; the settings say %.0f W/K.",
                learned.nights(),
                learned.heatLossWPerK(),
                settings.tunnel().heatLossWPerK());
        return both
                + (taken
                        ? " Control goes by what the nights teach."
                        : " That is too far apart to be believed, and control goes by the settings. Check [tunnel] and"
                                + " whether the sensors show what they should.");
    }
}
