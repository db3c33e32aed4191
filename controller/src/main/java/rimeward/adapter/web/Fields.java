package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLDecoder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rimeward.sizing.Refused;

/** What a form asks with, as the URL standard (WHATWG, {@code application/x-www-form-urlencoded}) writes it. */
final class Fields {
    private Fields() {}

    /**
     * @param question {@code width_m=4&cover=twin-wall}; a field that is empty was not said
     * @throws Refused where it is not written so
     */
    static Map<String, String> of(String question) throws Refused {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String field : question.split("&", -1)) {
            int at = field.indexOf('=');
            if (at >= 0 && at + 1 < field.length()) {
                fields.put(decoded(field.substring(0, at)), decoded(field.substring(at + 1)));
            }
        }
        return fields;
    }

    private static String decoded(String text) throws Refused {
        try {
            return URLDecoder.decode(text, UTF_8);
        } catch (IllegalArgumentException e) {
            throw new Refused(
                    List.of("What was asked is not written as a web address must be; use the form on the page."));
        }
    }
}
