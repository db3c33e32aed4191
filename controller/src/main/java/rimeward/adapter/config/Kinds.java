package rimeward.adapter.config;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The common kinds of value. */
public final class Kinds {
    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]*");
    private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3]):([0-5]\\d)");
    private static final Pattern DURATION = Pattern.compile("(\\d{1,6})(s|m|h|d)");

    private Kinds() {}

    /** A number, whole or not, both limits included; nan and inf are refused. */
    public static Kind<Double> number(double least, double most) {
        String expected = "a number between " + Shown.number(least) + " and " + Shown.number(most);
        return new Kind<>(expected, least, value -> within(asNumber(value, expected), least, most));
    }

    /** A temperature in °F with limits in °C, read as °C. */
    public static Kind<Double> fahrenheit(double leastC, double mostC) {
        Kind<Double> limited = number(round(leastC * 1.8 + 32, 10), round(mostC * 1.8 + 32, 10));
        return new Kind<>(
                limited.expected(),
                leastC,
                value -> round((limited.reading().read(value) - 32) / 1.8, 1e6)); // so that 39.2 °F is 4 °C
    }

    /** A whole number, both limits included. */
    public static Kind<Integer> whole(int least, int most) {
        String expected = "a whole number between " + least + " and " + most;
        return new Kind<>(expected, least, value -> {
            if (value instanceof Long number) {
                return (int) within(number, least, most);
            }
            throw notA(expected, value instanceof String ? "write it without quotes" : "round it");
        });
    }

    /** true or false. */
    public static Kind<Boolean> yesNo() {
        return new Kind<>("true or false", false, Kinds::asBoolean);
    }

    /** true or false, with what it says for whoever left it out. */
    public static Kind<Boolean> yesNo(String meaning) {
        return new Kind<>("true or false, " + meaning, false, Kinds::asBoolean);
    }

    /** Text that is not blank. */
    public static Kind<String> text() {
        return new Kind<>("text in quotes", "?", value -> {
            String text = asText(value, "text in quotes");
            if (text.isBlank()) {
                throw new Misread("is empty", "write something, or remove the key");
            }
            return text;
        });
    }

    /** A short name for machines: lower-case letters, digits and hyphens. */
    public static Kind<String> id() {
        String expected = "lower-case letters, digits and '-' only, in quotes";
        return new Kind<>(expected, "x", value -> {
            String text = asText(value, expected);
            if (!ID.matcher(text).matches()) {
                throw notA(expected, "write it like \"north-bench\"");
            }
            return text;
        });
    }

    /** One of an enum's constants, written in lower case with hyphens. */
    public static <E extends Enum<E>> Kind<E> word(Class<E> type) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return word(words);
    }

    /** One of the given words; there must be at least one. */
    public static <T> Kind<T> word(Map<String, T> words) {
        String expected = "one of \"" + String.join("\", \"", words.keySet()) + "\"";
        return new Kind<>(expected, words.values().iterator().next(), value -> {
            String text = asText(value, expected);
            T meant = words.get(text);
            if (meant == null) {
                throw notA(
                        expected,
                        Nearest.of(text, words.keySet())
                                .map(near -> "did you mean \"" + near + "\"?")
                                .orElse("choose one of them"));
            }
            return meant;
        });
    }

    /** A time of day, "HH:MM", as minutes since midnight. */
    public static Kind<Integer> timeOfDay() {
        String expected = "a time of day \"HH:MM\"";
        return new Kind<>(expected, 0, value -> {
            if (value instanceof LocalTime time) {
                return time.toSecondOfDay() / 60;
            }
            Matcher clock = CLOCK.matcher(asText(value, expected));
            if (!clock.matches()) {
                throw notA(expected, "write it like \"23:30\"");
            }
            return Integer.parseInt(clock.group(1)) * 60 + Integer.parseInt(clock.group(2));
        });
    }

    /** A time zone by its name in the IANA database. */
    public static Kind<ZoneId> zone() {
        String expected = "a time zone's name such as \"Europe/London\"";
        return new Kind<>(expected, ZoneOffset.UTC, value -> {
            try {
                return ZoneId.of(asText(value, expected));
            } catch (DateTimeException e) {
                throw notA(expected, "`timedatectl list-timezones` lists them");
            }
        });
    }

    /** A length of time: a whole number and s, m, h or d, in quotes. */
    public static Kind<Duration> duration() {
        String expected = "a length of time such as \"90s\", \"45m\", \"12h\" or \"14d\"";
        return new Kind<>(expected, Duration.ZERO, value -> {
            Matcher length = DURATION.matcher(asText(value, expected));
            if (!length.matches()) {
                throw notA(expected, "write a whole number and s, m, h or d");
            }
            long count = Long.parseLong(length.group(1));
            return switch (length.group(2)) {
                case "s" -> Duration.ofSeconds(count);
                case "m" -> Duration.ofMinutes(count);
                case "h" -> Duration.ofHours(count);
                default -> Duration.ofDays(count);
            };
        });
    }

    private static double asNumber(Object value, String expected) throws Misread {
        if (value instanceof Long whole) {
            return whole;
        }
        if (value instanceof Double number) {
            if (Double.isNaN(number) || Double.isInfinite(number)) {
                throw notA(expected, "give a real number");
            }
            return number;
        }
        throw notA(expected, value instanceof String ? "write it without quotes" : "give a number");
    }

    private static boolean asBoolean(Object value) throws Misread {
        if (value instanceof Boolean yes) {
            return yes;
        }
        throw notA("true or false", "write the bare word, without quotes");
    }

    private static String asText(Object value, String expected) throws Misread {
        if (value instanceof String text) {
            return text;
        }
        throw notA(expected, "put it in double quotes");
    }

    private static double within(double value, double least, double most) throws Misread {
        String problem = "must lie between " + Shown.number(least) + " and " + Shown.number(most);
        if (value < least) {
            throw new Misread(problem, "raise it to at least " + Shown.number(least));
        }
        if (value > most) {
            throw new Misread(problem, "lower it to at most " + Shown.number(most));
        }
        return value;
    }

    private static double round(double value, double parts) {
        return StrictMath.rint(value * parts) / parts;
    }

    private static Misread notA(String expected, String remedy) {
        return new Misread("must be " + expected, remedy);
    }

    /** Text that must be of some form. */
    static Kind<String> checked(
            String expected, String standIn, Predicate<String> isSound, String problem, String remedy) {
        Kind<String> text = text();
        return new Kind<>(expected, standIn, value -> {
            String read = text.reading().read(value);
            if (!isSound.test(read)) {
                throw new Misread(problem, remedy);
            }
            return read;
        });
    }
}
