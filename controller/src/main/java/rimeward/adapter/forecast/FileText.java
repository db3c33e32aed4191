package rimeward.adapter.forecast;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import rimeward.core.outlook.Forecast;
import rimeward.json.Json;

/** What stands in a forecast's file, whichever of the forms it has: CSV, points in JSON, or a weather service's reply that was saved. */
final class FileText {
    private FileText() {}

    /**
     * Reads it.
     *
     * @param modifiedEpochS when the file was changed: when a CSV was issued that does not say so
     */
    static Forecast read(byte[] bytes, String source, long modifiedEpochS) throws Unreadable {
        String text = text(bytes);
        if (!text.stripLeading().startsWith("{")) {
            return CsvText.read(text, source, modifiedEpochS);
        }
        Json json = Members.read(text);
        return json.get("properties").isPresent() ? ServiceText.read(json, source) : PointsText.read(json, source);
    }

    private static String text(byte[] bytes) throws Unreadable {
        if (bytes.length > Plausible.MOST_BYTES) {
            throw new Unreadable("it is longer than " + Plausible.MOST_BYTES + " bytes");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder() // reports what is no UTF-8, other than a String's constructor
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text; // spreadsheets put it there
        } catch (CharacterCodingException e) {
            throw new Unreadable("it is not UTF-8; save it as UTF-8");
        }
    }
}
