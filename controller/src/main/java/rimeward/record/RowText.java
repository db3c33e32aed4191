package rimeward.record;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;

/**
 * Lists of a row as text and back, without loss: numbers stand in the shortest form that reads back to the same bits. A
 * reading is {@code 4.25@3.0} (value, age in s), a loss {@code !NO_ANSWER}, nothing fitted {@code -}; a sensor's two readings
 * are joined by {@code /}, entries by a blank.
 */
public final class RowText {
    private RowText() {}

    public static <T> String list(List<T> each, Function<T, String> one) {
        return each.stream().map(one).collect(Collectors.joining(" "));
    }

    /** @throws IllegalArgumentException (from {@code one}) if an entry is not understood */
    public static <T> List<T> list(String text, Function<String, T> one) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(" ", -1)).map(one).toList();
    }

    public static String reading(Reading reading) {
        if (reading instanceof Reading.Value value) {
            return value.value() + "@" + value.ageS();
        }
        return reading instanceof Reading.Lost lost ? "!" + lost.why().name() : "-";
    }

    public static Reading reading(String text) {
        if (text.equals("-")) {
            return Reading.NOT_FITTED;
        }
        if (text.startsWith("!")) {
            return new Reading.Lost(Loss.valueOf(text.substring(1)));
        }
        String[] parts = parts(text, "@", 2, "a reading");
        return new Reading.Value(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
    }

    public static String sensor(SensorReading sensor) {
        return reading(sensor.airC()) + "/" + reading(sensor.rhPercent());
    }

    public static SensorReading sensor(String text) {
        String[] parts = parts(text, "/", 2, "a sensor");
        return new SensorReading(reading(parts[0]), reading(parts[1]));
    }

    public static String reason(Reason reason) {
        return reason.cause().name() + ":" + reason.measured() + ":" + reason.limit();
    }

    public static Reason reason(String text) {
        String[] parts = parts(text, ":", 3, "a reason");
        return new Reason(Cause.valueOf(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
    }

    public static String outlook(Outlook outlook) {
        return outlook instanceof Outlook.Night night
                ? night.night() + ":" + night.lowestOutsideC() + ":" + night.spreadK() + ":" + night.endsInS()
                : "-";
    }

    public static Outlook outlook(String text) {
        if (text.equals("-")) {
            return Outlook.NONE;
        }
        String[] parts = parts(text, ":", 4, "an outlook");
        return new Outlook.Night(
                Long.parseLong(parts[0]),
                Double.parseDouble(parts[1]),
                Double.parseDouble(parts[2]),
                Double.parseDouble(parts[3]));
    }

    private static String[] parts(String text, String mark, int count, String what) {
        String[] parts = text.split(mark, -1);
        if (parts.length != count) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not " + what + " of " + count + " parts joined by " + mark);
        }
        return parts;
    }
}
