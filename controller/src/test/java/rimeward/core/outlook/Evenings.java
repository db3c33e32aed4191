package rimeward.core.outlook;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.fixture.Sites;
import rimeward.site.Site;
import rimeward.site.Tariff;

/** Evenings to plan from: invented, and simple enough to be worked out by hand. */
final class Evenings {
    /** 16:00 UTC in January. */
    static final long DUSK_S = Instant.parse("2026-01-10T16:00:00Z").getEpochSecond();

    private Evenings() {}

    /** Twelve hours at one outside temperature, bone dry air, known to this spread. */
    static Course level(double outsideC, double spreadK) {
        return of(new Course.Basis.Forecasted("a test", DUSK_S, 5), DUSK_S, 12, outsideC, spreadK, outsideC - 8);
    }

    static Course of(Course.Basis basis, long fromS, int hours, double outsideC, double spreadK, double dewPointC) {
        List<Course.Step> steps = new ArrayList<>();
        for (int h = 0; h <= hours; h++) {
            steps.add(new Course.Step(fromS + h * 3600L, outsideC, spreadK, dewPointC));
        }
        return new Course(basis, steps);
    }

    /** 110 W/K, a mass of 8 MJ/K held by 180 W/K, no doubt about anything, from five nights. */
    static TunnelEstimate known() {
        return doubtful(0);
    }

    /** The same with the heat loss known to this, W/K. */
    static TunnelEstimate doubtful(double lossErrorWPerK) {
        return new TunnelEstimate(
                new Figure(110, lossErrorWPerK),
                sure(180),
                sure(150_000),
                sure(8e6),
                sure(0),
                sure(1),
                sure(1.3),
                sure(0.038),
                sure(0.03),
                5);
    }

    private static Figure sure(double value) {
        return new Figure(value, 0);
    }

    /** In air, pots and soil of this temperature, at 60 %, the tank empty. */
    static PlanStart start(double airC) {
        return new PlanStart(DUSK_S, airC, OptionalDouble.of(airC), OptionalDouble.of(60), OptionalDouble.of(10));
    }

    /** The coldest bench is the middle, and its sensor is exact. */
    static PlanChoices exact() {
        return PlanChoices.usual(Sites.metered()).withCorner(0);
    }

    static Site with(Tariff tariff, ZoneId zone) {
        Site usual = Sites.metered();
        return new Site(
                usual.id(),
                usual.name(),
                zone,
                usual.plants(),
                usual.targets(),
                usual.tunnel(),
                usual.sensors(),
                usual.heater(),
                usual.drying(),
                usual.venting(),
                usual.circuit(),
                tariff,
                usual.door());
    }
}
