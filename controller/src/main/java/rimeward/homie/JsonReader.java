package rimeward.homie;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON (RFC 8259) of strangers: strict, no name twice, nested {@value #DEEPEST} deep at most. Whoever calls bounds the length. */
final class JsonReader {
    private static final int DEEPEST = 12;

    private final String text;
    private int at;

    private JsonReader(String text) {
        this.text = text;
    }

    static Json read(String text) throws Misheard {
        JsonReader reader = new JsonReader(text);
        Json value = reader.value(0);
        reader.blanks();
        if (reader.at < text.length()) {
            throw reader.not("an end");
        }
        return value;
    }

    private Json value(int depth) throws Misheard {
        if (depth > DEEPEST) {
            throw new Misheard("it is nested more than " + DEEPEST + " deep");
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

    private Json members(int depth) throws Misheard {
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
                throw new Misheard("it has a name twice");
            }
            blanks();
            more = peek() == ',';
            at += more ? 1 : 0;
        }
        expect('}');
        return new Json.Members(each);
    }

    private Json elements(int depth) throws Misheard {
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

    private String string() throws Misheard {
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

    private char escaped() throws Misheard {
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

    private char unicode() throws Misheard {
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

    private Json word() throws Misheard {
        for (String word : List.of("true", "false", "null")) {
            if (text.startsWith(word, at)) {
                at += word.length();
                return new Json.Word(word);
            }
        }
        throw not("a value");
    }

    private Json number() throws Misheard {
        int from = at;
        while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return new Json.Figure(Payload.number(text.substring(from, at)));
    }

    private void blanks() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char peek() throws Misheard {
        if (at >= text.length()) {
            throw new Misheard("it ends too early to be JSON");
        }
        return text.charAt(at);
    }

    private void expect(char c) throws Misheard {
        if (peek() != c) {
            throw not("'" + c + "'");
        }
        at++;
    }

    private Misheard not(String what) {
        return new Misheard("it is no JSON: " + what + " was expected at character " + (at + 1));
    }
}
