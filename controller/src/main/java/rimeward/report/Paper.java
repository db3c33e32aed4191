package rimeward.report;

import rimeward.strip.Markup;
import rimeward.strip.Strip;

/** The sheet that a report is written on: one file that needs no network, no other file, and no script to be understood. */
public final class Paper {
    private Paper() {}

    /** Up to where the body begins. */
    public static void begin(String title, Markup to) {
        to.raw("<!doctype html>\n").open("html", "lang", "en").open("head");
        to.leaf("meta", "charset", "utf-8");
        to.leaf("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        to.leaf(
                "meta",
                "http-equiv",
                "Content-Security-Policy",
                "content",
                "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'");
        to.put("title", title);
        to.raw("<style>\n")
                .raw(Resource.text(Strip.class, "strip.css"))
                .raw(Resource.text(Paper.class, "page.css"))
                .raw("</style>");
        to.close().line().open("body");
    }

    /** The end, and so the whole. */
    public static String end(Markup to) {
        to.raw("<script>").raw(script()).raw("</script>");
        return to.close().close().line().done();
    }

    /** The one script in it, letter by letter, so that a policy can allow it and no other. */
    public static String script() {
        return "\n" + Resource.text(Strip.class, "strip.js");
    }

    /** A part with a heading; to be closed. */
    public static void section(String id, String title, Markup to) {
        to.line().open("section", "id", id, "aria-labelledby", id + "-title").put("h2", title, "id", id + "-title");
    }

    /** A field of the form at its head. */
    public static void field(String name, String value, Markup to) {
        to.open("div").put("dt", name).put("dd", value).close();
    }
}
