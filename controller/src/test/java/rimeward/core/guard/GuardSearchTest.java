package rimeward.core.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rimeward.core.decision.Cause;
import rimeward.core.judgement.Inside;
import rimeward.fixture.Sites;
import rimeward.site.Circuit;
import rimeward.site.DryerKind;
import rimeward.site.Drying;
import rimeward.site.Heater;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;
import rimeward.site.Venting;

/** The guard searched to the end of its discretised state space, and mutants that show the search can see. */
class GuardSearchTest {
    /** Below the floor, near it, in the band, above it, at the dryer's lock-out, hot, cooling, and hot-and-cold at once. */
    private static final List<Inside> SEEN = List.of(
            seen(3.5, 4, -1e-4),
            seen(4.1, 5, -1e-4),
            seen(4.5, 5, 1e-4),
            seen(5.2, 6, 0),
            seen(6.5, 7, 0),
            seen(20, 27.5, 0),
            seen(20, 29, 0),
            seen(4.5, 29, 0),
            new Inside.Seen(0, 0.5, 1, 0, 0));

    private static final List<Inside> BLIND =
            List.of(seen(6.5, 7, 0), seen(4.5, 5, 1e-4), new Inside.Unseen(60, false), new Inside.Unseen(60, true));

    private static Inside seen(double coldestC, double hottestC, double slopeKPerS) {
        return new Inside.Seen(coldestC, (coldestC + hottestC) / 2, hottestC, slopeKPerS, 0);
    }

    /** Two stages and a dryer on a circuit that carries any two of them. */
    private static Site threeMachines() {
        Heater heater = new Heater(
                List.of(
                        Sites.machine("stage-1", Role.HEATER_STAGE, 1000, 60, 60, 20),
                        Sites.machine("stage-2", Role.HEATER_STAGE, 1000, 60, 60, 20)),
                120);
        Drying dryer = new Drying.Dryer(
                Sites.machine("dryer", Role.DRYER, 600, 120, 120, 15), DryerKind.SORPTION, 40, 120, 1, 0.5, 10, true);
        return Sites.of(heater, dryer, new Venting.NoVentFan(), new Circuit(230, 10, 1, 200, 120));
    }

    /** One stage, a dryer and a fan on a circuit that carries little. */
    private static Site oneStageAndFan() {
        Heater heater = new Heater(List.of(Sites.machine("stage-1", Role.HEATER_STAGE, 1000, 60, 60, 20)), 120);
        Drying dryer = new Drying.Dryer(
                Sites.machine("dryer", Role.DRYER, 600, 120, 180, 12), DryerKind.COMPRESSOR, 40, 0, 1, 0.5, 10, true);
        Venting fan = new Venting.VentFan(Sites.machine("vent", Role.VENT_FAN, 50, 60, 60, 30));
        return Sites.of(heater, dryer, fan, new Circuit(230, 5, 1, 0, 60));
    }

    /** No more than that. */
    private static Site twoStages() {
        Heater heater = new Heater(
                List.of(
                        Sites.machine("stage-1", Role.HEATER_STAGE, 1000, 60, 60, 20),
                        Sites.machine("stage-2", Role.HEATER_STAGE, 1000, 60, 60, 20)),
                120);
        return Sites.of(heater, new Drying.NoDryer(), new Venting.NoVentFan(), new Circuit(230, 9, 1, 0, 60));
    }

    @Test
    void noReachableStateOfTwoStagesAndADryerBreaksAProperty() {
        Site site = threeMachines();
        GuardSearch search = new GuardSearch(site, SEEN, GuardSearch.real(site));
        int states = search.close();
        System.out.printf("guard search: %d states, %d inputs each%n", states, search.inputCount());
        assertThat(states).isGreaterThan(5000);
    }

    @Test
    void noReachableStateOfAStageADryerAndAFanBreaksAProperty() {
        Site site = oneStageAndFan();
        GuardSearch search = new GuardSearch(site, SEEN, GuardSearch.real(site));
        int states = search.close();
        System.out.printf("guard search: %d states, %d inputs each%n", states, search.inputCount());
        assertThat(states).isGreaterThan(1000);
    }

    @Test
    void noReachableStateWithBlindnessBreaksAProperty() {
        Site site = twoStages();
        GuardSearch search = new GuardSearch(site, BLIND, GuardSearch.real(site));
        int states = search.close();
        System.out.printf("guard search: %d states, %d inputs each%n", states, search.inputCount());
        assertThat(states).isGreaterThan(100);
    }

    /** Each machine in its turn, at any moment: in the cold, near the dryer's lock-out, and hot. */
    private static final List<Inside> SERVICED =
            List.of(seen(3.5, 4, -1e-4), seen(5.2, 6, 0), seen(6.5, 7, 0), seen(20, 29, 0));

    @Test
    void noReachableStateWithAMachineStandingDownBreaksAProperty() {
        for (Site site : List.of(threeMachines(), oneStageAndFan())) {
            GuardSearch search = new GuardSearch(site, SERVICED, GuardSearch.real(site), true);
            int states = search.close();
            System.out.printf("guard search: %d states, %d inputs each%n", states, search.inputCount());
            assertThat(states).isGreaterThan(1000);
        }
    }

    @Test
    void noReachableStateWithBlindnessAndAMachineStandingDownBreaksAProperty() {
        Site site = twoStages();
        GuardSearch search = new GuardSearch(site, BLIND, GuardSearch.real(site), true);
        int states = search.close();
        System.out.printf("guard search: %d states, %d inputs each%n", states, search.inputCount());
        assertThat(states).isGreaterThan(500);
    }

    /** Each takes one rule away, after the fact. */
    enum Mutant {
        NO_HAND_OVER("P2", Cause.NO_GAP),
        NO_CIRCUIT("P3", Cause.OVERLOAD),
        NO_SHORTEST_RUN("P4", Cause.MIN_ON),
        NO_REST("P4", Cause.MIN_REST),
        NO_HOT_LIMIT("P5", Cause.TOO_HOT),
        NO_OTHER_SOURCE("P6", Cause.HEAT_LOST),
        NO_START_LIMIT("P4/P7", Cause.START_SPACING),
        NO_STAND_DOWN("P0", Cause.STANDS_DOWN),
        NO_START_IN_HAND("P7", Cause.START_IN_HAND);

        private final String property;
        private final Cause lost;

        Mutant(String property, Cause lost) {
            this.property = property;
            this.lost = lost;
        }

        /** Gives the wish back to every machine that this cause overruled. */
        Guarded of(Guarded word) {
            int bits = word.closed().bits();
            for (int i = 0; i < word.reasons().size(); i++) {
                if (word.overruled().has(i) && word.reasons().get(i).cause() == lost) {
                    bits ^= 1 << i;
                }
            }
            RelaySet closed = RelaySet.of(bits);
            RelaySet overruled =
                    RelaySet.of(word.overruled().bits() ^ word.closed().bits() ^ bits);
            GuardState n = word.next();
            return new Guarded(
                    closed,
                    overruled,
                    word.reasons(),
                    word.holder(),
                    new GuardState(
                            closed,
                            n.clocks(),
                            n.needed(),
                            n.hot(),
                            n.dryerTooCold(),
                            n.dryerRestLeftS(),
                            n.sinceAnyStartS(),
                            n.blindPhaseS(),
                            n.standDowns()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSearchKillsEveryMutant(Mutant mutant) {
        Site site = threeMachines();
        GuardSearch.Step real = GuardSearch.real(site);
        GuardSearch search = new GuardSearch(
                site,
                SEEN,
                (was, decision, judgement, deliveries) -> mutant.of(real.step(was, decision, judgement, deliveries)),
                mutant == Mutant.NO_STAND_DOWN);
        assertThatThrownBy(search::close).isInstanceOf(AssertionError.class).hasMessageStartingWith(mutant.property);
    }
}
