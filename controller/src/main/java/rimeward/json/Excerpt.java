package rimeward.json;

/** A stranger's text so that it can stand in a log: short, in one line, without anything that moves a terminal's cursor. */
public final class Excerpt {
    private static final int MOST = 40;

    private Excerpt() {}

    public static String of(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < Math.min(MOST, text.length()); i++) {
            char c = text.charAt(i);
            out.append(c < ' ' || c > '~' || c == '"' ? '?' : c);
        }
        return out.append(text.length() > MOST ? "…\"" : "\"").toString();
    }
}
