package rimeward.core.outlook;

import rimeward.site.Site;
import rimeward.site.Targets;

/** What a grower has without Rimeward, as laws of a simulated night. Their settings are common practice, no source. */
final class PlainNight {
    /** A plug-in thermostat is set on at this much above the floor, and off so much higher, K. */
    private static final double THERMOSTAT_ABOVE_FLOOR_K = 1;

    private static final double THERMOSTAT_SWING_K = 1;

    /** A heater's own dial is set high, because its marks mean little; its bimetal is slow, K. */
    private static final double DIAL_ABOVE_FLOOR_K = 5;

    private static final double DIAL_SWING_K = 1.25;

    private PlainNight() {}

    static NightLaw.Maker thermostat(Site site) {
        double holdC = site.floorC() + THERMOSTAT_ABOVE_FLOOR_K + THERMOSTAT_SWING_K;
        return world -> now -> new NightLaw.Wish(holdC, THERMOSTAT_SWING_K, false, false);
    }

    static NightLaw.Maker byHand(Site site) {
        double holdC = site.floorC() + DIAL_ABOVE_FLOOR_K;
        return world -> now -> new NightLaw.Wish(holdC, DIAL_SWING_K, false, false);
    }

    static NightLaw.Maker dryerAlone(Site site) {
        return world -> new Humidistat(site.targets());
    }

    private static final class Humidistat implements NightLaw {
        private final Targets targets;
        private boolean dries;

        Humidistat(Targets targets) {
            this.targets = targets;
        }

        @Override
        public Wish wish(Sight now) {
            dries = now.rhPercent() >= (dries ? targets.dryOffPercent() : targets.dryOnPercent());
            return new Wish(Wish.NO_HEAT_C, 0, dries, false);
        }
    }
}
