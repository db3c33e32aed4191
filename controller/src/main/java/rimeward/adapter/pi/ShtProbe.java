package rimeward.adapter.pi;

import java.io.IOException;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

/**
 * A chip asked directly. SHT3x: Sensirion's datasheet SHT3x-DIS, version 5, table 9 (single shot, high repeatability, no clock
 * stretching), 4.4 and 4.13; that it takes 15.5 ms at most is from memory. SHT4x: drivers/hwmon/sht4x.c (command 0xFD, 8.2 ms, formulas);
 * its datasheet's own 8.3 ms is from memory. Both answer with temperature, its checksum, humidity, its checksum.
 */
record ShtProbe(I2cBus bus, Attached.I2c at) implements Probe {
    private static final double FULL_SCALE = 65_535;

    @Override
    public SensorReading read() {
        try {
            byte[] answer = at.chip() == Attached.Chip.SHT3X
                    ? bus.ask(at.address(), new byte[] {0x24, 0x00}, 20, 6)
                    : bus.ask(at.address(), new byte[] {(byte) 0xFD}, 12, 6);
            return decode(answer);
        } catch (IOException e) {
            return new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER);
        }
    }

    private SensorReading decode(byte[] answer) {
        if (Crc8.of(answer, 0, 2) != (answer[2] & 0xFF) || Crc8.of(answer, 3, 2) != (answer[5] & 0xFF)) {
            Reading bad = new Reading.Lost(Loss.BAD_CHECKSUM);
            return new SensorReading(bad, bad);
        }
        double airC = -45 + 175 * word(answer, 0) / FULL_SCALE;
        double share = word(answer, 3) / FULL_SCALE;
        double rhPercent = at.chip() == Attached.Chip.SHT3X ? 100 * share : -6 + 125 * share;
        return new SensorReading(new Reading.Value(airC, 0), Milli.clamped(new Reading.Value(rhPercent, 0)));
    }

    private static double word(byte[] answer, int from) {
        return ((answer[from] & 0xFF) << 8) | (answer[from + 1] & 0xFF);
    }
}
