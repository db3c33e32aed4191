package rimeward.core.outlook;

import rimeward.site.Drying;
import rimeward.site.Site;
import rimeward.site.Targets;

/**
 * Our law ({@code core.decision.DutyLaw}) by the quarter of an hour: the heater holds the floor band, the dryer dries, and warms
 * where that is enough and costs less. Its numbers are that law's; a test holds the plan against whole simulated nights. Airing by a
 * fan is not reckoned with: the dryer's electricity on mild damp nights is rather overstated.
 */
final class DutyNight implements NightLaw {
    /** The dryer is looked at so often, in steps: it likes long runs. */
    private static final int DRYER_STEPS = 3;

    private static final double RESERVE_K = 0.8;
    private static final double SWING_K = 2.5;
    private static final double HEADROOM = 1.1;
    private static final double SPREAD_HYSTERESIS_K = 0.5;

    private final Site site;
    private final PlanChoices choices;
    private final World world;
    private final Machinery machinery;
    private final Raise raise;
    private boolean dries;
    private boolean dryerWarms;

    /** How much higher than the band the air is to be held at a step, K. */
    interface Raise {
        Raise NONE = step -> 0;

        double byK(int step);
    }

    DutyNight(Site site, PlanChoices choices, World world, Raise raise) {
        this.site = site;
        this.choices = choices;
        this.world = world;
        this.raise = raise;
        machinery = Machinery.of(site, choices.out());
    }

    @Override
    public Wish wish(Sight now) {
        Targets targets = site.targets();
        double halfBandK = targets.differentialK() / 2;
        double middleBandC = onC() + halfBandK;
        if (now.step() % DRYER_STEPS == 0) {
            dries = dries(now);
            dryerWarms = dryerWarms(now, middleBandC);
        }
        double holdAirC = middleBandC + choices.doubtK() + choices.coldCornerK() + raise.byK(now.step());
        return new Wish(holdAirC, halfBandK, dries || dryerWarms, true);
    }

    /** Where heat goes on, °C. */
    private double onC() {
        return site.floorC() + site.targets().guardMarginK();
    }

    private boolean dries(Sight now) {
        Targets targets = site.targets();
        double filmC = now.outsideC() + site.tunnel().filmFraction() * (now.middleC() - now.outsideC());
        double hysteresisK = dries ? SPREAD_HYSTERESIS_K : 0;
        return now.rhPercent() >= (dries ? targets.dryOffPercent() : targets.dryOnPercent())
                || now.coldestC() - now.dewPointC() < targets.benchDewSpreadK() + hysteresisK
                || filmC - now.dewPointC() < targets.filmDewSpreadK() + hysteresisK;
    }

    private boolean dryerWarms(Sight now, double holdC) {
        return machinery.drying() instanceof Drying.Dryer
                && now.rhPercent() >= site.targets().dryOffPercent()
                && now.coldestC() < RESERVE_K + onC() + (dryerWarms ? SWING_K : 0)
                && pays(holdC, now);
    }

    /** Whether its warmth can hold the floor alone, and does so for less or comes free with drying that must be done anyway. */
    private boolean pays(double holdC, Sight now) {
        double ratedW = machinery.dryerW();
        double needsW = world.heatLossWPerK() * (holdC + RESERVE_K - now.outsideC());
        double heaterW = StrictMath.max(0, world.heatLossWPerK() * (holdC - now.outsideC())) / world.heaterYield();
        double liftedW = world.heatLossWPerK() * (onC() + RESERVE_K + SWING_K / 2 - now.outsideC());
        boolean less = StrictMath.min(ratedW, liftedW / world.dryerYield()) < heaterW;
        boolean driesAnyway = now.rhPercent() >= site.targets().rhPercent();
        return needsW * HEADROOM <= world.dryerYield() * ratedW && heaterW > 0 && (driesAnyway || less);
    }
}
