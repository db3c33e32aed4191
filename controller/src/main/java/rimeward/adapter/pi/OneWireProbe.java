package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;

/**
 * A DS18B20. Its scratchpad is judged, not only the kernel's number: 85.00 °C is what it holds at power-up before it has measured, 127.94
 * °C what it gives with too little power (Documentation/w1/slaves/w1_therm.rst, "features"), and a shorted bus reads as zeros, whose
 * checksum is zero too.
 */
record OneWireProbe(Path root, Attached.OneWire at) implements Probe {
    private static final Pattern SLAVE =
            Pattern.compile("((?:[0-9a-f]{2} ){9}): crc=[0-9a-f]{2} (YES|NO)\\s+.*t=(-?\\d{1,7})", Pattern.DOTALL);
    private static final int POWER_ON_MILLI_C = 85_000;
    private static final int FAULTY_MILLI_C = 127_937;

    @Override
    public SensorReading read() {
        Path file = root.resolve("sys/bus/w1/devices").resolve(at.device()).resolve("w1_slave");
        return new SensorReading(airC(Folders.line(file)), Reading.NOT_FITTED);
    }

    private static Reading airC(String text) {
        Matcher slave = SLAVE.matcher(text);
        if (!slave.matches()) {
            return Reading.NO_ANSWER;
        }
        if (slave.group(2).equals("NO")) {
            return new Reading.Lost(Loss.BAD_CHECKSUM);
        }
        int milliC = Integer.parseInt(slave.group(3));
        boolean allZero = slave.group(1).replace("00 ", "").isEmpty();
        boolean fault = allZero || milliC == POWER_ON_MILLI_C || milliC >= FAULTY_MILLI_C;
        return fault ? new Reading.Lost(Loss.FAULT_VALUE) : new Reading.Value(milliC / 1000.0, 0);
    }
}
