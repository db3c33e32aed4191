package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.physics.VentFanParameters;

/**
 * The step must not show: 1 s, 5 s and 10 s give the same cold night to 0.02 K, though thermostats, humidistats, defrosts and run-on
 * turn whenever they like. The limit is our specification's.
 */
class StepSizeReferenceTest {
    private static final double NIGHT_S = 14 * 3600;
    private static final double LOOK_S = 10;

    enum Night {
        HEATER_ON_ITS_DIAL,
        BIG_HEATER_ON_ITS_DIAL,
        SORPTION_DRYER,
        COMPRESSOR_DRYER,
        SWITCHED_BY_TURNS
    }

    @ParameterizedTest
    @EnumSource
    void shortAndLongStepsAgree(Night night) {
        double[][] fine = run(night, 1);
        for (double stepS : new double[] {5, 10}) {
            double[][] coarse = run(night, stepS);
            for (int quantity = 0; quantity < 2; quantity++) {
                for (int look = 0; look < fine.length; look++) {
                    assertThat(Math.abs(coarse[look][quantity] - fine[look][quantity]))
                            .as("%s, step %s s, look %s", night, stepS, look)
                            .isLessThan(0.02);
                }
            }
        }
    }

    @Test
    void theNightsAreNotDull() {
        for (Night night : Night.values()) {
            double[][] run = run(night, 5);
            double lowest = 100;
            double highest = -100;
            for (double[] look : run) {
                lowest = Math.min(lowest, look[0]);
                highest = Math.max(highest, look[0]);
            }
            assertThat(highest - lowest).as(night.name()).isGreaterThan(3);
        }
    }

    /** Air and mass temperature every 10 s. */
    private static double[][] run(Night night, double stepS) {
        DryerParameters dryer = night == Night.COMPRESSOR_DRYER ? Defaults.compressorDryer() : Defaults.sorptionDryer();
        List<Double> stagesW = List.of(1000.0, 1000.0);
        HeaterParameters heater = Defaults.heater(stagesW, new DialParameters(6, 2, 180));
        Tunnel tunnel = new Tunnel(
                Defaults.tunnel(), new MachineParameters(heater, dryer, VentFanParameters.none()), Defaults.evening());
        double[][] looks = new double[(int) (NIGHT_S / LOOK_S)][];
        int substeps = (int) (LOOK_S / stepS);
        for (int look = 0; look < looks.length; look++) {
            boolean turn = look / 90 % 2 == 0;
            tunnel.heater().contact(0, night.name().contains("DIAL") || (night == Night.SWITCHED_BY_TURNS && turn));
            tunnel.heater().contact(1, night == Night.BIG_HEATER_ON_ITS_DIAL);
            tunnel.dryer().contact(night.name().contains("DRYER") || (night == Night.SWITCHED_BY_TURNS && !turn));
            for (int i = 0; i < substeps; i++) {
                ColdNight.show(tunnel, look * LOOK_S + (i + 0.5) * stepS);
                tunnel.advance(stepS);
            }
            looks[look] = new double[] {tunnel.airC(), tunnel.massC()};
        }
        return looks;
    }
}
