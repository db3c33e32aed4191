package rimeward.adapter.pi;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;

/** Files of the kernel that hold one whole number of thousandths. */
final class Milli {
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");

    private Milli() {}

    /** The number, or why there is none: the driver's refusal is a failing read. */
    static Reading read(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.US_ASCII).strip();
            return WHOLE.matcher(text).matches()
                    ? new Reading.Value(Integer.parseInt(text) / 1000.0, 0)
                    : new Reading.Lost(text.isEmpty() ? Loss.NO_ANSWER : Loss.FAULT_VALUE);
        } catch (IOException e) {
            return Reading.NO_ANSWER;
        }
    }

    /** Relative humidity, brought into what can be: chips and drivers may say −6 to 119 % (drivers/hwmon/sht4x.c). */
    static Reading clamped(Reading rhPercent) {
        return rhPercent instanceof Reading.Value some
                ? new Reading.Value(StrictMath.max(0, StrictMath.min(100, some.value())), some.ageS())
                : rhPercent;
    }
}
