package rimeward.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Sites;

class SiteTest {
    private final Site site = Sites.metered();

    private static Site with(Site s, List<Plant> plants, Targets targets, List<Sensor> sensors, Circuit circuit) {
        return new Site(
                s.id(),
                s.name(),
                plants,
                targets,
                s.tunnel(),
                sensors,
                s.heater(),
                s.drying(),
                s.venting(),
                circuit,
                s.tariff());
    }

    @Test
    void theFloorIsTheHighestOfThePlantsMinimums() {
        assertThat(site.floorC()).isEqualTo(4);
    }

    @Test
    void machinesCountStagesFirstThenDryerThenFan() {
        assertThat(site.machines()).extracting(Machine::id).containsExactly("stage-1", "stage-2", "dryer", "vent");
        assertThat(site.heaterStages()).isEqualTo(RelaySet.of(0b0011));
        assertThat(site.dryerRelay()).isEqualTo(RelaySet.of(0b0100));
        assertThat(site.ventRelay()).isEqualTo(RelaySet.of(0b1000));
        assertThat(site.ratedW(RelaySet.of(0b0101))).isEqualTo(1600);
    }

    @Test
    void withoutAControllerTheFirstStageIsLeftToItsOwnThermostatUnlessItsLineSaysOtherwise() {
        assertThat(site.stopState()).isEqualTo(RelaySet.of(0b0001));
        assertThat(site.isWired()).isFalse();
        Site wired = Sites.of(
                new Heater(List.of(onLine("stage-1", 17, false), onLine("stage-2", 27, true)), 120),
                site.drying(),
                site.venting(),
                site.circuit());
        assertThat(wired.stopState()).isEqualTo(RelaySet.of(0b0010));
        assertThat(wired.isWired()).isTrue();
    }

    private static Machine onLine(String id, int line, boolean closedAtStop) {
        Wiring wiring = new Wiring.GpioLine("pinctrl-bcm2835", line, false, false, closedAtStop);
        return new Machine(id, Role.HEATER_STAGE, 1000, 60, 60, 12, false, wiring);
    }

    @Test
    void aFloorBandThatReachesTheHotLimitIsRefused() {
        Targets cool = new Targets(0.7, 1, 10, 75, 10, 1, -4);
        assertThatThrownBy(() -> with(site, List.of(new Plant("orchid", 15)), cool, site.sensors(), site.circuit()))
                .hasMessage("the floor band ends at 16.7 °C, less than 1 K below hotC = 10.0");
    }

    @Test
    void aMachineThatAloneOverloadsTheCircuitIsRefused() {
        Circuit thin = new Circuit(230, 5, 0.8, 0, 10);
        assertThatThrownBy(() -> with(site, site.plants(), site.targets(), site.sensors(), thin))
                .hasMessage("stage-1 alone draws 1040.0 W; the circuit carries 920.0 W for hours on end");
    }

    @Test
    void withoutASensorInsideItIsRefused() {
        List<Sensor> outsideOnly = site.sensors().subList(3, 4);
        assertThatThrownBy(() -> with(site, site.plants(), site.targets(), outsideOnly, site.circuit()))
                .hasMessage("at least one sensor must hang inside");
    }

    @Test
    void twoSensorsOfOneNameAreRefused() {
        Sensor one = site.sensors().get(0);
        assertThatThrownBy(() -> with(site, site.plants(), site.targets(), List.of(one, one), site.circuit()))
                .hasMessage("two sensors are called \"cold-corner\"");
    }

    @Test
    void aMachineWhoseRunsAndRestsDoNotFitItsStartsIsRefused() {
        assertThatThrownBy(() -> Sites.machine("dryer", Role.DRYER, 600, 600, 600, 4))
                .hasMessage("minOnS + minRestS of dryer is longer than its share of the hour (3600 s / maxStartsPerH)");
    }

    @Test
    void notANumberIsRefusedEverywhere() {
        assertThatThrownBy(() -> new Plant("fig", Double.NaN)).hasMessageContaining("minimumC of fig is NaN");
    }

    @Test
    void aNightTariffMayPassMidnight() {
        Tariff tariff = new Tariff.DayNight("GBP", 0.30, 0.10, 23 * 60, 6 * 60);
        assertThat(tariff.pricePerKWh(22 * 60 + 59)).isEqualTo(0.30);
        assertThat(tariff.pricePerKWh(23 * 60)).isEqualTo(0.10);
        assertThat(tariff.pricePerKWh(0)).isEqualTo(0.10);
        assertThat(tariff.pricePerKWh(6 * 60)).isEqualTo(0.30);
    }

    @Test
    void theCircuitCarriesEightyPercentOfAThirteenAmperePlugForHours() {
        // BS 1363: 13 A × 230 V = 2990 W; continuous loads at most 80 % (NEC); both from memory
        assertThat(new Circuit(230, 13, 0.8, 0, 10).limitW()).isEqualTo(2392);
    }
}
