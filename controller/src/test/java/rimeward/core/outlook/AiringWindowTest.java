package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;
import rimeward.core.decision.Airing;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Judgement;
import rimeward.fixture.Beliefs;
import rimeward.fixture.Sites;
import rimeward.site.Site;

final class AiringWindowTest {
    private static final Site SITE = Sites.metered();
    private static final Course.Basis BASIS = new Course.Basis.Forecasted("a test", Evenings.DUSK_S, 5);

    /** Cold by night; from the next morning at nine mild and dry until it clouds over at one. */
    private static Course morning() {
        long s = Evenings.DUSK_S;
        return new Course(
                BASIS,
                List.of(
                        new Course.Step(s, 3, 1, 2),
                        new Course.Step(s + 16 * 3600, 4, 1, 2),
                        new Course.Step(s + 17 * 3600, 11, 1, 2),
                        new Course.Step(s + 21 * 3600, 11, 1, 2),
                        new Course.Step(s + 22 * 3600, 11, 1, 10.5),
                        new Course.Step(s + 24 * 3600, 8, 1, 7.9)));
    }

    private static NightPlan plan(Course course) {
        PlanStart start =
                new PlanStart(Evenings.DUSK_S, 9, OptionalDouble.of(9), OptionalDouble.of(90), OptionalDouble.of(10));
        return NightPlan.of(SITE, Evenings.known(), course, start, Evenings.exact());
    }

    @Test
    void theWindowIsWhenOutsideIsDryAndMild() {
        assertThat(plan(morning()).airing()).singleElement().satisfies(window -> {
            assertThat((window.fromEpochS() - Evenings.DUSK_S) / 3600.0).isBetween(16.2, 18.0);
            assertThat((window.toEpochS() - Evenings.DUSK_S) / 3600.0).isBetween(21.0, 22.2);
            assertThat(window.drierKgPerKg()).isGreaterThan(AiringWindow.DRIER_KG_PER_KG);
        });
        assertThat(PlanText.sheet(plan(morning()), SITE)).contains("Opening up dries for nothing: Sun 11 Jan");
    }

    @Test
    void thereIsNoneInAFrost() {
        assertThat(plan(Evenings.level(-3, 1)).airing()).isEmpty();
    }

    /** The plan may not import the law, so this holds their limits together. */
    @Test
    void theLimitsAreThoseOfTheLaw() {
        double insideKgPerKg = 0.006;
        double clearC = SITE.floorC() + AiringWindow.CLEAR_OF_FLOOR_K;
        double drier = insideKgPerKg - AiringWindow.DRIER_KG_PER_KG;
        assertThat(helps(clearC, insideKgPerKg, drier - 1e-6)).isTrue();
        assertThat(helps(clearC, insideKgPerKg, drier + 1e-6)).isFalse();
        assertThat(helps(clearC - 0.01, insideKgPerKg, drier - 1e-6)).isFalse();
        assertThat(MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(clearC), 101_325))
                .as("such air exists")
                .isGreaterThan(insideKgPerKg);
    }

    private static boolean helps(double outsideC, double insideKgPerKg, double outsideKgPerKg) {
        Judgement judgement = Beliefs.of(
                Beliefs.seen(12, 0), new Damp.Seen(80, 8, insideKgPerKg), Beliefs.outside(outsideC, outsideKgPerKg));
        return Airing.helps(SITE, judgement, false);
    }
}
