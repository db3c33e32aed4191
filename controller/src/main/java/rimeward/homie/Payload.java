package rimeward.homie;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import rimeward.json.Excerpt;
import rimeward.json.Json;
import rimeward.json.JsonReader;
import rimeward.json.NoJson;

/** Payloads of strangers, as strictly as the convention has them. */
final class Payload {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,18}(\\.\\d{1,18})?([eE][-+]?\\d{1,3})?");
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,18}");

    private Payload() {}

    /** The text of at most so many bytes. */
    static String text(byte[] payload, int most) throws Misheard {
        if (payload.length > most) {
            throw new Misheard("it has " + payload.length + " bytes; " + most + " are allowed");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder() // reports what is no UTF-8, other than a String's constructor
                    .decode(ByteBuffer.wrap(payload))
                    .toString();
            if (text.startsWith("\ufeff")) {
                throw new Misheard("it begins with a byte order mark");
            }
            return text;
        } catch (CharacterCodingException e) {
            throw new Misheard("it is not UTF-8");
        }
    }

    /** A float: digits, {@code -}, one point and an exponent; finite. */
    static double number(String text) throws Misheard {
        double value = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!Double.isFinite(value)) {
            throw new Misheard(shown(text) + " is no number");
        }
        return value;
    }

    /** An integer. */
    static long whole(String text) throws Misheard {
        if (!WHOLE.matcher(text).matches()) {
            throw new Misheard(shown(text) + " is no whole number");
        }
        return Long.parseLong(text);
    }

    /** JSON. */
    static Json json(String text) throws Misheard {
        try {
            return JsonReader.read(text);
        } catch (NoJson e) {
            throw new Misheard(e.why());
        }
    }

    /** A stranger's text as it may stand in a log. */
    static String shown(String text) {
        return Excerpt.of(text);
    }
}
