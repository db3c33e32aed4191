package rimeward.browser;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Pictures of every sheet in every case, for people to look at. {@code Shots FOLDER [CASE …]} */
final class Shots {
    private static final List<String> SHEETS =
            List.of("now", "tonight", "record", "record/2026-01-26", "tunnel", "hands");

    private Shots() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        List<String> stories = args.length > 1 ? List.of(args).subList(1, args.length) : Story.ALL;
        try (Browser browser = new Browser()) {
            for (String story : stories) {
                try (StandIn service = new StandIn(0, story)) {
                    take(browser, service, story, folder);
                }
            }
        }
    }

    /** One case on phone and desk, light and dark: the first screen, and each sheet whole. */
    static void take(Browser browser, StandIn service, String story, Path folder) throws IOException {
        for (String paper : List.of("light", "dark")) {
            for (int widthPx : List.of(390, 1280)) {
                for (String sheet : SHEETS) {
                    browser.as(widthPx, 844, paper).open(service.address() + "/#" + sheet);
                    settled(browser);
                    String name = story + "-" + sheet.replace('/', '-') + "-" + widthPx + "-" + paper + ".png";
                    if (sheet.equals("now")) {
                        browser.shoot(folder.resolve("first-" + name));
                    }
                    browser.shootWhole(folder.resolve(name));
                }
            }
        }
    }

    /** Until the sheet has what it shows. */
    static void settled(Browser browser) {
        browser.until("the controller is heard", () -> browser.text("#heard").startsWith("heard"));
        browser.until(
                "the sheet is drawn",
                () -> Boolean.TRUE.equals(
                        browser.run(
                                "return document.querySelector('main').childElementCount > 1 && [...document.querySelectorAll('main .strip-room')].every(r => r.childElementCount > 0) && document.querySelector('main .strip, main table, main .waits') !== null")));
    }
}
