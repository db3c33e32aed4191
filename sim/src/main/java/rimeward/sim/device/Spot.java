package rimeward.sim.device;

import rimeward.air.RelativeHumidity;
import rimeward.sim.world.Truth;

/** Where a sensor hangs in the simulated world. */
sealed interface Spot {
    double airC(Truth truth);

    double rhPercent(Truth truth);

    /** At a bench, by its place among the world's benches. */
    record Bench(int bench) implements Spot {
        @Override
        public double airC(Truth truth) {
            return truth.benchC(bench);
        }

        @Override
        public double rhPercent(Truth truth) {
            return truth.benchRhPercent(bench);
        }
    }

    record Outside() implements Spot {
        @Override
        public double airC(Truth truth) {
            return truth.outsideAirC();
        }

        @Override
        public double rhPercent(Truth truth) {
            return RelativeHumidity.overWaterPercent(truth.outsideAirC(), truth.outsideVapourPa());
        }
    }
}
