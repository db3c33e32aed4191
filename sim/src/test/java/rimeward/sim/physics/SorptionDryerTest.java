package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SorptionDryerTest {

    private static Night running() {
        Night night = Night.with(Defaults.sorptionDryer());
        night.tunnel.dryer().contact(true);
        return night;
    }

    @Test
    void itCollectsLittleBeforeItsRotorIsWarm() {
        Night night = running();
        night.seconds(60);
        double firstMinuteKg = night.tunnel.collectedKg();
        night.seconds(1200);
        double beforeKg = night.tunnel.collectedKg();
        night.seconds(60);
        assertThat(firstMinuteKg).isLessThan(0.5 * (night.tunnel.collectedKg() - beforeKg));
    }

    @Test
    void whatItCollectsIsInTheTankAndItsHeatInTheAir() {
        Night night = running().hours(4);
        assertThat(night.tunnel.tankKg()).isCloseTo(night.tunnel.collectedKg(), within(1e-9));
        double latentJ = night.tunnel.heat().inJ(HeatPath.COLLECTION);
        assertThat(latentJ / night.tunnel.collectedKg()).isBetween(2.45e6, 2.5e6);
    }

    @Test
    void itsFanRunsOnAfterTheRequestEnds() {
        Night night = running().hours(1);
        assertThat(night.tunnel.dryer().powerW()).isEqualTo(600);
        night.tunnel.dryer().contact(false);
        night.seconds(5);
        assertThat(night.tunnel.dryer().phase()).isEqualTo(DryerPhase.RUN_ON);
        assertThat(night.tunnel.dryer().powerW()).isEqualTo(40);
        double ranOnS = night.until(() -> night.tunnel.dryer().phase() == DryerPhase.IDLE);
        assertThat(ranOnS).isBetween(230.0, 245.0);
        assertThat(night.tunnel.dryer().powerW()).isZero();
    }

    @Test
    void aPowerCutLeavesItsRotorHot() {
        Night cut = running().hours(1);
        Night switched = running().hours(1);
        cut.tunnel.dryer().supplied(false);
        switched.tunnel.dryer().contact(false);
        cut.seconds(200);
        switched.seconds(200);
        assertThat(cut.tunnel.dryer().powerW()).isZero();
        assertThat(cut.tunnel.dryerC()).isGreaterThan(switched.tunnel.dryerC() + 5);
    }

    @Test
    void itsHumidistatStopsItAndStartsItAgain() {
        Night night = Night.with(Defaults.sorptionDryer(), new StartState(12, 12, 60, 140, 0));
        night.weather(8, 30, 1, 2);
        night.tunnel.dryer().contact(true);
        night.until(night.tunnel.dryer()::isSatisfied);
        assertThat(night.tunnel.dryer().phase()).isNotEqualTo(DryerPhase.RUNNING);
        night.weather(8, 95, 1, 2);
        night.until(() -> night.tunnel.dryer().phase() == DryerPhase.RUNNING);
        assertThat(night.tunnel.dryer().isSatisfied()).isFalse();
    }

    @Test
    void itsFloatStopsItUntilTheTankIsEmptied() {
        Night night = Night.with(Defaults.sorptionDryer(), new StartState(8, 9, 85, 140, 4.9));
        night.tunnel.dryer().contact(true);
        night.until(night.tunnel.dryer()::isTankFull);
        assertThat(night.tunnel.tankKg()).isCloseTo(5, within(1e-6));
        night.hours(1);
        assertThat(night.tunnel.tankKg()).isCloseTo(5, within(1e-6));
        assertThat(night.tunnel.dryer().powerW()).isZero();
        night.tunnel.emptyTank();
        night.hours(1);
        assertThat(night.tunnel.dryer().phase()).isEqualTo(DryerPhase.RUNNING);
        assertThat(night.tunnel.tankKg()).isBetween(0.1, 1.0);
    }

    @Test
    void itLocksItselfAgainstColdAir() {
        Night night = running().weather(-12, 90, 4, -20);
        night.until(night.tunnel.dryer()::isTooCold);
        assertThat(night.tunnel.airC()).isCloseTo(1, within(0.05));
        night.hours(1);
        assertThat(night.tunnel.dryer().powerW()).isZero();
    }

    @Test
    void chokedWithIceItDrawsPowerForNothing() {
        Night night = running();
        night.tunnel.dryer().iced(true);
        night.hours(1);
        assertThat(night.tunnel.collectedKg()).isZero();
        assertThat(night.tunnel.dryer().powerW()).isEqualTo(600);
    }

    @Test
    void eachOfItsFaultsStopsIt() {
        Night night = running().hours(1);
        Dryer dryer = night.tunnel.dryer();
        dryer.tripped(true);
        assertThat(stops(night)).isTrue();
        dryer.tripped(false);
        dryer.humidistatOpen(true);
        assertThat(stops(night)).isTrue();
        dryer.humidistatOpen(false);
        dryer.floatUp(true);
        assertThat(stops(night)).isTrue();
        dryer.floatUp(false);
        assertThat(stops(night)).isFalse();
    }

    private static boolean stops(Night night) {
        night.hours(0.2);
        return night.tunnel.dryer().phase() != DryerPhase.RUNNING;
    }
}
