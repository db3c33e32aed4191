package rimeward.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads JSON (RFC 8259) of strangers: strict, no name twice, nested {@value #DEEPEST} deep and {@value #MOST_VALUES} values at most, so that a
 * short text cannot fill the memory. Whoever calls bounds the length.
 */
public final class JsonReader {
    private static final int DEEPEST = 12;
    private static final int MOST_VALUES = 50_000; // ten times a long forecast. Own choice
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,18}(\\.\\d{1,18})?([eE][-+]?\\d{1,3})?");

    private final String text;
    private int at;
    private int values;

    private JsonReader(String text) {
        this.text = text;
    }

    /** @throws NoJson with the place where it stops being JSON */
    public static Json read(String text) throws NoJson {
        JsonReader reader = new JsonReader(text);
        Json value = reader.value(0);
        reader.blanks();
        if (reader.at < text.length()) {
            throw reader.not("an end");
        }
        return value;
    }

    private Json value(int depth) throws NoJson {
        if (depth > DEEPEST) {
            throw new NoJson("it is nested more than " + DEEPEST + " deep");
        }
        if (++values > MOST_VALUES) {
            throw new NoJson("it has more than " + MOST_VALUES + " values");
        }
        blanks();
        return switch (peek()) {
            case '{' -> members(depth);
            case '[' -> elements(depth);
            case '"' -> new Json.Text(string());
            case 't', 'f', 'n' -> word();
            default -> number();
        };
    }

    private Json members(int depth) throws NoJson {
        Map<String, Json> each = new LinkedHashMap<>();
        at++;
        blanks();
        boolean more = peek() != '}';
        while (more) {
            blanks();
            String name = string();
            blanks();
            expect(':');
            if (each.put(name, value(depth + 1)) != null) {
                throw new NoJson("it has a name twice");
            }
            blanks();
            more = peek() == ',';
            at += more ? 1 : 0;
        }
        expect('}');
        return new Json.Members(each);
    }

    private Json elements(int depth) throws NoJson {
        List<Json> each = new ArrayList<>();
        at++;
        blanks();
        boolean more = peek() != ']';
        while (more) {
            each.add(value(depth + 1));
            blanks();
            more = peek() == ',';
            at += more ? 1 : 0;
        }
        expect(']');
        return new Json.Elements(each);
    }

    private String string() throws NoJson {
        expect('"');
        StringBuilder out = new StringBuilder();
        while (peek() != '"') {
            char c = text.charAt(at++);
            if (c < ' ') {
                throw not("a character that may stand in a text");
            }
            out.append(c == '\\' ? escaped() : c);
        }
        at++;
        return out.toString();
    }

    private char escaped() throws NoJson {
        char c = peek();
        at++;
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> unicode();
            default -> throw not("an escape");
        };
    }

    private char unicode() throws NoJson {
        int code = 0;
        for (int i = 0; i < 4; i++) {
            int digit = "0123456789abcdef".indexOf(lower(peek()));
            if (digit < 0) {
                throw not("four hexadecimal digits");
            }
            code = code * 16 + digit;
            at++;
        }
        return (char) code;
    }

    private static char lower(char c) {
        return c >= 'A' && c <= 'F' ? (char) (c + 32) : c;
    }

    private Json word() throws NoJson {
        for (String word : List.of("true", "false", "null")) {
            if (text.startsWith(word, at)) {
                at += word.length();
                return new Json.Word(word);
            }
        }
        throw not("a value");
    }

    private Json number() throws NoJson {
        int from = at;
        while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String digits = text.substring(from, at);
        double value = NUMBER.matcher(digits).matches() ? Double.parseDouble(digits) : Double.NaN;
        if (!Double.isFinite(value)) {
            throw new NoJson(Excerpt.of(digits) + " is no number");
        }
        return new Json.Figure(value);
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char peek() throws NoJson {
        if (at >= text.length()) {
            throw new NoJson("it ends too early to be JSON");
        }
        return text.charAt(at);
    }

    private void expect(char c) throws NoJson {
        if (peek() != c) {
            throw not("'" + c + "'");
        }
        at++;
    }

    private NoJson not(String what) {
        return new NoJson("it is no JSON: " + what + " was expected at character " + (at + 1));
    }
}
