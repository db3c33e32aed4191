package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.fixture.Sites;
import rimeward.site.Degrees;
import rimeward.site.RelaySet;
import rimeward.site.Site;
import rimeward.site.Tariff;

final class NightPlanTest {
    private static final Site SITE = Sites.metered();

    private static NightPlan plan(double outsideC, double startC) {
        return NightPlan.of(
                SITE, Evenings.known(), Evenings.level(outsideC, 1), Evenings.start(startC), Evenings.exact());
    }

    @Test
    void inASteadyNightTheHeaterMakesUpForWhatIsLost() {
        double holdC = SITE.floorC() + 0.7 + 0.5 + Evenings.exact().doubtK();
        NightPlan plan = plan(-8, holdC);
        double lostKWh = 110 * (holdC - -8) * 12 / 1000;
        assertThat(plan.kWh().value()).isCloseTo(lostKWh, within(lostKWh * 0.01));
        assertThat(plan.cost().value()).isCloseTo(0.30 * plan.kWh().value(), within(1e-9));
        assertThat(plan.kWhEach().stream().mapToDouble(Double::doubleValue).sum())
                .isCloseTo(plan.kWh().value(), within(1e-9));
        assertThat(plan.hours()).hasSize(12).allSatisfy(hour -> {
            assertThat(hour.lengthS()).isEqualTo(3600);
            assertThat(hour.outsideC().value()).isEqualTo(-8);
        });
    }

    @Test
    void heatThatComesOutOfTheMassIsNotPaidFor() {
        double storedKWh = (8e6 + 150_000) * (8 - 5.4) / 3.6e6;
        double warmKWh = plan(-8, 8).kWh().value();
        double evenKWh = plan(-8, 5.4).kWh().value();
        assertThat(evenKWh - warmKWh).isBetween(0.3 * storedKWh, storedKWh);
    }

    @Test
    void noBenchGetsBelowTheFloorWhileThereIsHeatEnough() {
        for (double outsideC = 8; outsideC >= -12; outsideC -= 2) {
            for (double startC : List.of(4.5, 8.0, 14.0)) {
                NightPlan plan = plan(outsideC, startC);
                assertThat(plan.lowestBenchC().value())
                        .as("outside %s °C, from %s °C", outsideC, startC)
                        .isGreaterThanOrEqualTo(SITE.floorC());
                assertThat(plan.chanceCold()).isLessThan(0.5);
            }
        }
    }

    @Test
    void aMildNightNeedsNobody() {
        NightPlan plan = plan(7, 9);
        assertThat(plan.kWh().value()).isZero();
        assertThat(plan.hours()).allMatch(hour -> hour.holder().isNobody());
        assertThat(plan.chanceCold()).isLessThan(1e-6);
        assertThat(plan.warns()).isFalse();
        assertThat(PlanText.sentences(plan, SITE))
                .contains("No machine need warm.", "Nothing needs doing before dark.");
    }

    @Test
    void stagesJoinAsItGetsColder() {
        assertThat(plan(-2, 5.4).hours().get(6).holder()).isEqualTo(new WarmHolder(List.of(1), false));
        PlanHour cold = plan(-10, 5.4).hours().get(6);
        assertThat(cold.holder()).isEqualTo(new WarmHolder(List.of(1, 2), false));
        assertThat(cold.shares().get(0)).isEqualTo(1);
        assertThat(cold.shares().get(1)).isBetween(0.5, 0.8);
        assertThat(cold.holder().inWords()).isEqualTo("heater stages 1 and 2");
    }

    @Test
    void theChanceIsEvenWhereNeedMeetsWhatThereIs() {
        PlanChoices noDryer = Evenings.exact().without(SITE.dryerRelay());
        double warmC = 4;
        double coldC = -30;
        for (int i = 0; i < 50; i++) {
            double middleC = (warmC + coldC) / 2;
            NightPlan plan =
                    NightPlan.of(SITE, Evenings.doubtful(10), Evenings.level(middleC, 2), Evenings.start(5.4), noDryer);
            boolean likely = plan.chanceCold() > 0.5;
            warmC = likely ? warmC : middleC;
            coldC = likely ? middleC : coldC;
        }
        NightPlan even =
                NightPlan.of(SITE, Evenings.doubtful(10), Evenings.level(warmC, 2), Evenings.start(5.4), noDryer);
        double leastSpareW = even.hours().stream()
                .mapToDouble(hour -> hour.spareW().value())
                .min()
                .orElseThrow();
        assertThat(leastSpareW).isCloseTo(0, within(0.01));
        assertThat(even.chanceCold()).isCloseTo(0.5, within(1e-5));
        assertThat(warmC).as("by hand, the mass giving a little").isCloseTo(4 - 2000.0 / 110, within(1.5));
    }

    @Test
    void theChanceRisesWithTheColdAndWithDoubt() {
        double before = 0;
        for (double outsideC = -6; outsideC >= -26; outsideC -= 2) {
            double chance = plan(outsideC, 5.4).chanceCold();
            assertThat(chance).isGreaterThanOrEqualTo(before);
            before = chance;
        }
        assertThat(before).isGreaterThan(0.99);
        NightPlan sure =
                NightPlan.of(SITE, Evenings.known(), Evenings.level(-11, 1), Evenings.start(5.4), Evenings.exact());
        NightPlan unsure = NightPlan.of(
                SITE, Evenings.doubtful(25), Evenings.level(-11, 3), Evenings.start(5.4), Evenings.exact());
        assertThat(unsure.chanceCold()).isGreaterThan(sure.chanceCold());
        assertThat(unsure.kWh().standardError()).isGreaterThan(sure.kWh().standardError());
        assertThat(unsure.kWh().value()).isEqualTo(sure.kWh().value());
    }

    @Test
    void aHeaterTooSmallIsToldInTimeAndWithWhatWouldHelp() {
        NightPlan plan = NightPlan.of(
                SITE,
                Evenings.doubtful(10),
                Evenings.level(-16, 1),
                Evenings.start(8),
                Evenings.exact().without(RelaySet.of(1 << Sites.STAGE_2)));
        assertThat(plan.warns()).isTrue();
        assertThat(plan.lowestBenchC().value()).isLessThan(SITE.floorC());
        assertThat(plan.coldFromEpochS()).isPresent();
        assertThat(plan.helps())
                .anySatisfy(help -> assertThat(help).isInstanceOfSatisfying(Help.MachineBack.class, back -> {
                    assertThat(back.machine()).isEqualTo("stage-2");
                    assertThat(back.chanceThen()).isLessThan(plan.chanceCold());
                }));
        String todo = String.join(" ", PlanText.sentences(plan, SITE));
        assertThat(todo)
                .contains(
                        "will probably not hold",
                        "bring stage-2 back into use",
                        "W more heat",
                        "W/K",
                        "a cover over the plants");
    }

    @Test
    void theHeatThatIsSaidToBeMissingIsEnough() {
        Course cold = Evenings.level(-18, 1);
        NightPlan tight = NightPlan.of(SITE, Evenings.doubtful(5), cold, Evenings.start(5.4), Evenings.exact());
        double lessWPerK = tight.helps().stream()
                .filter(Help.LessLoss.class::isInstance)
                .mapToDouble(help -> ((Help.LessLoss) help).lossWPerK())
                .findFirst()
                .orElseThrow();
        TunnelEstimate insulated = less(Evenings.doubtful(5), lessWPerK);
        NightPlan then = NightPlan.of(SITE, insulated, cold, Evenings.start(5.4), Evenings.exact());
        assertThat(tight.chanceCold()).isGreaterThan(0.1);
        assertThat(then.chanceCold()).isCloseTo(0.05, within(0.03));
    }

    private static TunnelEstimate less(TunnelEstimate from, double lossWPerK) {
        return new TunnelEstimate(
                new Figure(
                        from.heatLossWPerK().value() - lossWPerK,
                        from.heatLossWPerK().standardError()),
                from.massCouplingWPerK(),
                from.airCapacityJPerK(),
                from.massCapacityJPerK(),
                from.groundW(),
                from.heaterYield(),
                from.dryerYield(),
                from.airExchangeKgPerS(),
                from.wettingKgPerS(),
                from.nights());
    }

    @Test
    void aBenchThatIsColdAlreadyIsNoQuestionOfChance() {
        NightPlan plan = plan(0, 3);
        assertThat(plan.hours().get(0).chanceCold()).isEqualTo(1);
        assertThat(plan.hours().get(1).chanceCold()).isLessThan(0.01);
        assertThat(plan.warns()).isTrue();
    }

    @Test
    void whatIsOutOfUseIsNotCountedOn() {
        NightPlan none = NightPlan.of(
                SITE,
                Evenings.known(),
                Evenings.level(-5, 1),
                Evenings.start(6),
                Evenings.exact().without(RelaySet.of(0b111)));
        assertThat(none.kWh().value()).isZero();
        assertThat(none.lowestBenchC().value())
                .isEqualTo(none.lowestFreeFloatC().value());
        assertThat(none.tank()).isInstanceOf(Tank.None.class);
        assertThat(none.chanceCold()).isGreaterThan(0.999);
    }

    @Test
    void dampAirIsDriedAndASmallTankDoesNotLast() {
        Course damp =
                Evenings.of(new Course.Basis.Forecasted("a test", Evenings.DUSK_S, 5), Evenings.DUSK_S, 12, 6, 1, 5.8);
        NightPlan lasts = NightPlan.of(SITE, Evenings.known(), damp, damp(OptionalDouble.of(10)), Evenings.exact());
        assertThat(lasts.tank()).isInstanceOf(Tank.Lasts.class);
        assertThat(lasts.litres().value()).isGreaterThan(1);
        NightPlan full = NightPlan.of(SITE, Evenings.known(), damp, damp(OptionalDouble.of(0.8)), Evenings.exact());
        assertThat(full.tank()).isInstanceOf(Tank.FullAt.class);
        assertThat(full.litres().value()).isEqualTo(0.8, within(1e-9));
        assertThat(full.kWh().value()).isLessThan(lasts.kWh().value());
        assertThat(PlanText.sheet(full, SITE))
                .contains("its tank has room for 0.8 L and is full at about")
                .contains("empty the dryer's tank before dark");
    }

    private static PlanStart damp(OptionalDouble tankLeftL) {
        return new PlanStart(Evenings.DUSK_S, 7, OptionalDouble.of(7), OptionalDouble.of(95), tankLeftL);
    }

    @Test
    void theDryerWarmsAMildDampNightWhereThatIsEnough() {
        Course damp =
                Evenings.of(new Course.Basis.Forecasted("a test", Evenings.DUSK_S, 5), Evenings.DUSK_S, 12, 2, 1, 1.9);
        NightPlan plan = NightPlan.of(SITE, Evenings.known(), damp, damp(OptionalDouble.of(10)), Evenings.exact());
        assertThat(plan.hours()).anyMatch(hour -> hour.holder().equals(new WarmHolder(List.of(), true)));
    }

    @Test
    void whatNobodyKnowsIsAssumedAndSaidSo() {
        Course guess = Evenings.of(new Course.Basis.Guess(), Evenings.DUSK_S, 12, -3, 3, -5);
        NightPlan plan = NightPlan.of(
                SITE, TunnelEstimate.assumed(SITE), guess, PlanStart.of(Evenings.DUSK_S, 6), PlanChoices.usual(SITE));
        assertThat(plan.basis().isGuess()).isTrue();
        assertThat(PlanText.sheet(plan, SITE))
                .contains(
                        "This plan is a guess: nobody has forecast the weather, and the tunnel is taken as the settings"
                                + " describe it",
                        "pots and soil are as warm as the air",
                        "the damp inside is what the model balances",
                        "the dryer's tank is empty");
        assertThat(plan.hours())
                .allSatisfy(hour -> assertThat(hour.rhPercent().value()).isBetween(20.0, 100.0));
        assertThat(PlanText.sheet(plan(-3, 6), SITE)).doesNotContain("guess").contains("learned from 5 nights");
    }

    @Test
    void dearerHoursCostMoreAndTheClockIsThePlaces() {
        ZoneId zone = ZoneId.of("Europe/London");
        long fromS =
                Instant.parse("2026-10-24T20:00:00Z").getEpochSecond(); // summer time ends that night, at 01:00 UTC
        Tariff night = new Tariff.DayNight("GBP", 0.30, 0.10, 30, 7 * 60 + 30);
        Site site = Evenings.with(night, zone);
        Course course = Evenings.of(new Course.Basis.Forecasted("a test", fromS, 5), fromS, 14, -8, 1, -12);
        PlanStart start =
                new PlanStart(fromS, 5.4, OptionalDouble.of(5.4), OptionalDouble.of(60), OptionalDouble.of(10));
        NightPlan plan = NightPlan.of(site, Evenings.known(), course, start, Evenings.exact());
        double cheapH = 0;
        for (PlanHour hour : plan.hours()) {
            double perKWh = hour.cost().value() / hour.kWh().value();
            assertThat(perKWh).isBetween(0.0999, 0.3001);
            cheapH += (0.30 - perKWh) / 0.20 * hour.lengthS() / 3600;
        }
        assertThat(cheapH).as("00:30 to 07:30 and the hour that comes twice").isCloseTo(8, within(0.02));
        assertThat(PlanText.sheet(plan, site)).contains("01:00 +01:00", "01:00 +00:00");
    }

    @Test
    void warmingAheadIsAdviceAndOnlyWhereItPays() {
        Tariff steep = new Tariff.DayNight("GBP", 2.0, 0.05, 0, 6 * 60);
        NightPlan pays = priced(steep);
        assertThat(pays.preWarm()).isInstanceOfSatisfying(PreWarm.Worth.class, worth -> {
            assertThat(worth.saved().value()).isPositive();
            assertThat(Instant.ofEpochSecond(worth.toEpochS())).isEqualTo("2026-01-11T06:00:00Z");
        });
        assertThat(String.join(" ", PlanText.sentences(pays, Evenings.with(steep, ZoneOffset.UTC))))
                .contains("advice only, control does not do it by itself");
        assertThat(priced(new Tariff.DayNight("GBP", 0.21, 0.20, 0, 6 * 60)).preWarm())
                .isInstanceOf(PreWarm.NotWorth.class);
        assertThat(plan(-8, 5.4).preWarm()).isInstanceOf(PreWarm.NotPriced.class);
    }

    private static NightPlan priced(Tariff tariff) {
        Course course =
                Evenings.of(new Course.Basis.Forecasted("a test", Evenings.DUSK_S, 5), Evenings.DUSK_S, 20, -2, 1, -12);
        return NightPlan.of(
                Evenings.with(tariff, ZoneOffset.UTC), Evenings.known(), course, Evenings.start(5.4), Evenings.exact());
    }

    @Test
    void theCircuitBoundsWhatCanBeGiven() {
        Site narrow = Sites.limited(1200); // one stage of 1000 W, and no dryer beside it
        NightPlan plan =
                NightPlan.of(narrow, Evenings.known(), Evenings.level(-10, 1), Evenings.start(5.4), Evenings.exact());
        assertThat(plan.hours()).allSatisfy(hour -> {
            assertThat(hour.shares().get(Sites.STAGE_2)).isZero();
            assertThat(hour.kWh().value()).isLessThanOrEqualTo(1.0001);
        });
        assertThat(plan.chanceCold()).isGreaterThan(0.99);
    }

    @Test
    void aCourseThatIsOverIsRefused() {
        PlanStart late = PlanStart.of(Evenings.DUSK_S + 13 * 3600, 6);
        assertThatThrownBy(() -> NightPlan.of(SITE, Evenings.known(), Evenings.level(0, 1), late, Evenings.exact()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ends before the plan begins");
        assertThatThrownBy(() -> PlanStart.of(0, Double.NaN)).hasMessageContaining("between -60.0 and 60.0");
    }

    @Test
    void noPlanLooksFartherThanADay() {
        Course twoDays =
                Evenings.of(new Course.Basis.Forecasted("a test", Evenings.DUSK_S, 5), Evenings.DUSK_S, 60, 0, 1, -3);
        NightPlan plan = NightPlan.of(SITE, Evenings.known(), twoDays, Evenings.start(6), Evenings.exact());
        assertThat(plan.endEpochS() - plan.madeEpochS()).isEqualTo(86_400);
        assertThat(plan.hours()).hasSize(24);
    }

    @Test
    void degreesAreTheGrowersOwn() {
        Site fahrenheit = SITE.withDegrees(Degrees.FAHRENHEIT);
        NightPlan plan =
                NightPlan.of(fahrenheit, Evenings.known(), Evenings.level(-8, 1), Evenings.start(6), Evenings.exact());
        assertThat(PlanText.sheet(plan, fahrenheit))
                .contains("The floor of 39.2 °F", "outside °F", "17.6")
                .doesNotContain("°C");
    }
}
