package rimeward.report;

import rimeward.strip.Markup;

/** Samples of ink with their names. */
public final class Legend {
    private Legend() {}

    public static void open(Markup to) {
        to.open("ul", "class", "legend");
    }

    public static void line(String kind, String name, Markup to) {
        sample("path", kind, "M0 6h30", name, to);
    }

    public static void bar(String kind, String name, Markup to) {
        sample("path", "bar " + kind, "M0 2h30v8H0z", name, to);
    }

    private static void sample(String element, String kind, String path, String name, Markup to) {
        to.open("li").open("svg", "class", "strip-ink", "width", "30", "height", "12", "aria-hidden", "true");
        to.leaf(element, "class", kind, "d", path).close().text(" " + name).close();
    }
}
