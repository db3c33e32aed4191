package rimeward.adapter.pi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rimeward.core.reading.Reading;
import rimeward.site.Meter;

/** A meter of 1000 pulses per kWh, 3600 J each, where nothing else is said. */
class PulsePowerTest {
    private PulsePower power = begun(1000);

    @Test
    void theMeanFromPulseToPulse() {
        pulsesAt(0, 2.4, 4.8);
        assertThat(at(4.8)).isEqualTo(new Reading.Value(1500, 0));
        assertThat(at(6.0)).as("the next is not due yet").isEqualTo(new Reading.Value(1500, 1.2));
    }

    @Test
    void aPulseThatDoesNotComeTellsHowLittleItCanBe() {
        pulsesAt(0, 2.4, 4.8);
        assertThat(watts(4.8 + 3.6)).isCloseTo(1000, within(1e-6));
        assertThat(watts(4.8 + 36)).isCloseTo(100, within(1e-6));
        assertThat(((Reading.Value) at(4.8 + 36)).ageS())
                .as("known now, not then")
                .isZero();
        assertThat(watts(4.8 + PulsePower.ZERO_AFTER_S - 1)).isCloseTo(6, within(0.02));
        assertThat(at(4.8 + PulsePower.ZERO_AFTER_S)).isEqualTo(new Reading.Value(0, 0));
    }

    @Test
    void afterAStartNothingIsKnownUntilTwoPulsesOrALongSilence() {
        assertThat(at(19)).isEqualTo(Reading.NO_ANSWER);
        assertThat(watts(20)).isCloseTo(180, within(1e-6));
        power.pulses(1, ns(30));
        assertThat(at(31)).as("one pulse is no interval").isEqualTo(Reading.NO_ANSWER);
        power.pulses(1, ns(32));
        assertThat(watts(32)).isCloseTo(1800, within(1e-6));
    }

    @Test
    void switchingOnIsSeenFromTheSecondPulseOn() {
        pulsesAt(0, 2.4);
        assertThat(watts(3600)).isZero();
        power.pulses(1, ns(3602));
        power.pulses(1, ns(3604.4));
        assertThat(watts(3604.4)).isCloseTo(1500, within(1e-6));
    }

    @Test
    void aDryerWhoseFanAloneRunsOnIsNotTakenForOneThatDries() {
        for (double atS = 0; atS < 60; atS += 3600 / 600.0) {
            pulsesAt(atS);
        }
        for (double atS = 54 + 72; atS < 400; atS += 3600 / 50.0) {
            pulsesAt(atS);
        }
        assertThat(watts(54 + 4 * 72)).isCloseTo(50, within(1e-6));
    }

    @Test
    void silentThreadsAndFailingSourcesGiveNoNumber() {
        pulsesAt(0, 2.4, 4.8);
        assertThat(power.latch(ns(4.8 + 5.1))).as("nobody asked").isEqualTo(Reading.NO_ANSWER);
        assertThat(at(10)).isInstanceOf(Reading.Value.class);
        power.failed("EIO");
        assertThat(at(10)).isEqualTo(Reading.NO_ANSWER);
    }

    /** The coarsest meter that settings let pass: what control asks 20 s after a switching has its right answer. */
    @Test
    void theCoarsestMeterTellsAWorkingMachineFromADeadOneInTime() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 1000; i++) {
            double ratedW = random.nextDouble(20, 3000);
            double pulseJ = 3.6e6 / Meter.fewestPulsesPerKWh(ratedW);
            power = begun(Meter.fewestPulsesPerKWh(ratedW));
            double phaseJ = random.nextDouble(pulseJ);
            double onS = 1000;
            pulsesAt(0);
            for (double atS = onS + phaseJ / ratedW; atS < onS + 20; atS += pulseJ / ratedW) {
                pulsesAt(atS);
            }
            assertThat(watts(onS + 20)).as("seed 11, run %d", i).isCloseTo(ratedW, within(1e-3 * ratedW));
            double lastS = onS + 20;
            assertThat(watts(lastS + 20)).as("dead").isLessThan(0.26 * ratedW);
        }
    }

    @Test
    void neverMoreThanThePulsesAllow() {
        SplittableRandom random = new SplittableRandom(12);
        double nowS = 0;
        double lastS = 0;
        pulsesAt(0);
        for (int i = 0; i < 10_000; i++) {
            nowS += random.nextDouble(0.1, 20);
            if (random.nextBoolean()) {
                pulsesAt(nowS);
                lastS = nowS;
            } else if (at(nowS) instanceof Reading.Value value) {
                assertThat(value.value()).isBetween(0.0, 3600 / (nowS - lastS) * (1 + 1e-6));
            }
        }
    }

    private static PulsePower begun(double pulsesPerKWh) {
        PulsePower power = new PulsePower("the meter", pulsesPerKWh);
        power.begin(0);
        return power;
    }

    private void pulsesAt(double... timesS) {
        for (double atS : timesS) {
            power.pulses(1, ns(atS));
        }
    }

    private Reading at(double nowS) {
        power.asked(ns(nowS));
        return power.latch(ns(nowS));
    }

    private double watts(double nowS) {
        return ((Reading.Value) at(nowS)).value();
    }

    private static long ns(double seconds) {
        return Math.round(seconds * 1e9);
    }
}
