package rimeward.homie;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Constants as payloads: {@code NOT_NEEDED} is {@code not-needed}. */
final class Words {
    private Words() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String list(Enum<?>[] all) {
        return Arrays.stream(all).map(Words::of).collect(Collectors.joining(","));
    }
}
