package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.air.MoistAir;

class TunnelTest {

    /** Pushes a tunnel through a seeded muddle of weather, switching and faults, looking at it after every step. */
    private static Tunnel muddle(long seed, int steps, Look look) {
        SplittableRandom random = new SplittableRandom(seed);
        DryerParameters dryer = seed % 2 == 0 ? Defaults.sorptionDryer() : Defaults.compressorDryer();
        MachineParameters machines = new MachineParameters(Defaults.heater(), dryer, new VentFanParameters(300, 40));
        Tunnel tunnel = new Tunnel(Defaults.tunnel(), machines, Defaults.evening());
        for (int i = 0; i < steps; i++) {
            if (i % 200 == 0) {
                change(tunnel, random);
            }
            tunnel.advance(random.nextInt(4) == 0 ? 1 + 9 * random.nextDouble() : 5);
            look.at(tunnel);
        }
        return tunnel;
    }

    private interface Look {
        void at(Tunnel tunnel);
    }

    private static void change(Tunnel tunnel, SplittableRandom random) {
        double airC = random.nextDouble(-20, 15);
        double humidity = random.nextDouble(0.0005, 0.004);
        tunnel.outside()
                .set(
                        airC,
                        humidity,
                        MoistAir.pressurePa(310),
                        random.nextDouble(0, 15),
                        airC - random.nextDouble(0, 25),
                        random.nextInt(3) == 0 ? random.nextDouble(0, 600) : 0);
        tunnel.heater().contact(0, random.nextBoolean());
        tunnel.heater().contact(1, random.nextBoolean());
        tunnel.heater().supplied(random.nextInt(5) > 0);
        tunnel.heater().fanStalled(random.nextInt(8) == 0);
        tunnel.dryer().contact(random.nextBoolean());
        tunnel.dryer().supplied(random.nextInt(5) > 0);
        tunnel.openings().door(random.nextInt(6) == 0);
        tunnel.openings().torn(random.nextInt(6) == 0 ? 0.5 : 0);
        tunnel.openings().fanContact(random.nextInt(4) == 0);
        if (random.nextInt(10) == 0) {
            tunnel.emptyTank();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void nothingIsEverNegativeOrLost(long seed) {
        Tunnel tunnel = muddle(seed, 40_000, t -> {
            assertThat(t.humidityKgPerKg()).isPositive();
            assertThat(t.filmWaterKg()).isNotNegative();
            assertThat(t.filmFrostKg()).isNotNegative();
            assertThat(t.mediumWaterKg()).isNotNegative();
            assertThat(t.coilIceKg()).isNotNegative();
            assertThat(t.airC()).isBetween(-30.0, 80.0);
        });
        assertThat(tunnel.heat().closure()).isLessThan(1e-9);
        assertThat(tunnel.water().closure()).isLessThan(1e-9);
        assertThat(tunnel.heat().turnoverJ()).isGreaterThan(1e8);
        assertThat(tunnel.water().turnoverKg()).isGreaterThan(1);
    }

    @Test
    void theSameRunTwiceGivesTheSameBits() {
        assertThat(bits(muddle(7, 20_000, t -> {}))).containsExactly(bits(muddle(7, 20_000, t -> {})));
    }

    private static long[] bits(Tunnel tunnel) {
        return new long[] {
            Double.doubleToRawLongBits(tunnel.airC()),
            Double.doubleToRawLongBits(tunnel.massC()),
            Double.doubleToRawLongBits(tunnel.humidityKgPerKg()),
            Double.doubleToRawLongBits(tunnel.filmFrostKg()),
            Double.doubleToRawLongBits(tunnel.heat().turnoverJ()),
            Double.doubleToRawLongBits(tunnel.water().turnoverKg()),
        };
    }

    @Test
    void benchesDifferFromTheMeanAirByOffsetAndLift() {
        Night night = Night.with(new DryerParameters.None());
        double liftK = night.tunnel.airC() - 2;
        assertThat(night.tunnel.benchC(0)).isCloseTo(night.tunnel.airC(), within(1e-12));
        assertThat(night.tunnel.benchC(2)).isCloseTo(night.tunnel.airC() - 0.4 - 0.07 * liftK, within(1e-12));
        assertThat(night.tunnel.coldestBenchC()).isEqualTo(night.tunnel.benchC(2));
        assertThat(night.tunnel.benchRhPercent(2)).isGreaterThan(night.tunnel.benchRhPercent(0));
    }

    @Test
    void evaporationCoolsTheMass() {
        Night moist = Night.with(new DryerParameters.None(), new StartState(8, 9, 40, 140, 0));
        Night parched = Night.with(Night.tunnel(0), Defaults.machines(), new StartState(8, 9, 40, 0, 0));
        moist.weather(6, 40, 2, 2).hours(6);
        parched.weather(6, 40, 2, 2).hours(6);
        assertThat(moist.tunnel.massC()).isLessThan(parched.tunnel.massC() - 0.1);
    }

    @Test
    void theGrowerWatersBeforeTheMediumIsDry() {
        Night night = Night.with(new DryerParameters.None(), new StartState(20, 20, 40, 90.1, 0));
        night.weather(18, 30, 4, 15).hours(6);
        assertThat(night.tunnel.water().movedKg(WaterPath.WATERING)).isGreaterThan(60);
        assertThat(night.tunnel.mediumWaterKg()).isBetween(90.0, 160.0);
    }

    @Test
    void theSunWarmsAnUnheatedTunnelByDay() {
        Night night = Night.with(new DryerParameters.None());
        night.tunnel.outside().set(5, 0.004, MoistAir.pressurePa(310), 2, -5, 400);
        night.hours(3);
        assertThat(night.tunnel.airC()).isGreaterThan(12);
    }

    @Test
    void aLongStepEqualsManyShortOnes() {
        Night once = Night.with(Defaults.sorptionDryer());
        Night often = Night.with(Defaults.sorptionDryer());
        once.tunnel.dryer().contact(true);
        often.tunnel.dryer().contact(true);
        once.tunnel.advance(3600);
        often.hours(1);
        assertThat(once.tunnel.airC()).isCloseTo(often.tunnel.airC(), within(1e-9));
        assertThat(once.tunnel.elapsedS()).isCloseTo(3600, within(1e-6));
    }
}
