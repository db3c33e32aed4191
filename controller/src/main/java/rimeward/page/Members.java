package rimeward.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** An object of JSON while it is put together. What is not known is left out. */
final class Members {
    private final Map<String, Object> each = new LinkedHashMap<>();

    Members put(String name, Object value) {
        each.put(name, value);
        return this;
    }

    /** A number with so many decimals. */
    Members number(String name, double value, int decimals) {
        return put(name, rounded(value, decimals));
    }

    Members number(String name, OptionalDouble value, int decimals) {
        value.ifPresent(known -> number(name, known, decimals));
        return this;
    }

    /** A constant as a word: {@code NOT_NEEDED} is {@code not-needed}. */
    Members word(String name, Enum<?> constant) {
        return put(name, word(constant));
    }

    Map<String, Object> map() {
        return each;
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Object rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
