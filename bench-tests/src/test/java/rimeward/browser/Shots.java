package rimeward.browser;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Pictures of sheets, for people to look at: {@code Shots FOLDER [CASE or http://HOST:PORT,… [SHEET,… [WIDTH,… [PAPER,…]]]]}, all without. */
final class Shots {
    static final List<String> SHEETS = List.of("now", "tonight", "record", "record/2026-01-26", "tunnel", "hands");
    static final List<String> WIDTHS_PX = List.of("390", "1280");
    static final List<String> PAPERS = List.of("light", "dark");

    private Shots() {}

    public static void main(String[] args) throws IOException {
        try (Browser browser = new Browser()) {
            for (String story : chosen(args, 1, Story.ALL)) {
                if (story.startsWith("http")) { // a service that runs already
                    take(browser, story, "live", args);
                } else {
                    try (StandIn service = new StandIn(0, story, browser::leave)) {
                        take(browser, service.address(), story, args);
                    }
                }
            }
        }
    }

    private static void take(Browser browser, String address, String story, String[] args) throws IOException {
        for (String sheet : chosen(args, 2, SHEETS)) {
            for (String widthPx : chosen(args, 3, WIDTHS_PX)) {
                for (String paper : chosen(args, 4, PAPERS)) {
                    browser.as(Integer.parseInt(widthPx), 844, paper).open(address + "/#" + sheet);
                    settled(browser);
                    shoot(
                            browser,
                            Path.of(args[0]),
                            story + "-" + sheet.replace('/', '-') + "-" + widthPx + "-" + paper + ".png");
                }
            }
        }
    }

    private static List<String> chosen(String[] args, int index, List<String> all) {
        return args.length > index && !args[index].equals("all") ? List.of(args[index].split(",")) : all;
    }

    /** The first screen, and the whole sheet. */
    static void shoot(Browser browser, Path folder, String name) throws IOException {
        browser.shoot(folder.resolve("first-" + name));
        browser.shootWhole(folder.resolve(name));
    }

    /** Until the sheet has what it shows. */
    static void settled(Browser browser) {
        browser.until("the controller is heard", () -> browser.text("#heard").startsWith("heard"));
        browser.until(
                "the sheet is drawn",
                () -> Boolean.TRUE.equals(browser.run(
                        "return document.querySelector('main').childElementCount > 1 && [...document.querySelectorAll('main .strip-room')].every(r => r.childElementCount > 0)"
                                + " && document.querySelector('main .strip, main table, main .waits') !== null")));
    }
}
