package rimeward.core.judgement;

import java.util.List;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;

/** All temperatures of a frame, outside ones too: a sensor's neighbours are all but itself. Only their change is of use. */
record Others(double sumC, int count) {

    static Others of(List<SensorReading> readings) {
        double sumC = 0;
        int count = 0;
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).airC() instanceof Reading.Value value && isNumber(value.value())) {
                sumC += value.value();
                count++;
            }
        }
        return new Others(sumC, count);
    }

    private static boolean isNumber(double value) {
        return StrictMath.abs(value) < Double.POSITIVE_INFINITY;
    }

    /** Mean of the neighbours of a sensor that reads this, °C; 0 where it has none. */
    double meanC(double ownC) {
        return count < 2 ? 0 : (sumC - ownC) / (count - 1);
    }
}
