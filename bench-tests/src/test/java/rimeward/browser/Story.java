package rimeward.browser;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** One hand-made case: what each address of the wire answers. */
final class Story {
    /** Cases, each a {@code now} of its own under the resources. */
    static final List<String> ALL =
            List.of("mild-evening", "frost-night", "alert-stands", "blind", "nothing-yet", "hostile-names");

    /** 2026-01-27 22:14 UTC, when all of them play. */
    static final long AT_S = 1_769_552_040;

    private static final long COLDEST_S = 1_769_583_600; // 07:00 the next morning

    private Story() {}

    static Map<String, String> of(String name) throws IOException {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("/api/now", text(name + ".json"));
        if (name.equals("nothing-yet")) {
            answers.put("/api/day", Invented.columns(AT_S, 60, 0, 0, 0, 0));
            answers.put("/api/nights", "{\"nights\":[]}");
            answers.put(
                    "/api/tonight",
                    "{\"waitingFor\":\"The plan waits for the first readings: it is made from noon on.\"}");
            answers.put("/api/tunnel", text("tunnel-waits.json"));
        } else {
            double meanC = name.equals("mild-evening") ? 7 : -1.5;
            answers.put("/api/day", Invented.columns(AT_S - 86_400, 300, 288, meanC, 5.5, COLDEST_S));
            answers.put("/api/nights", Invented.nights(LocalDate.of(2026, 1, 26), 200));
            answers.put(
                    "/api/night",
                    text("night.json")
                            .replace(
                                    "\"COLUMNS\"",
                                    Invented.columns(1_769_443_200, 300, 216, -2, 5.5, COLDEST_S - 86_400)));
            answers.put("/api/tonight", text("tonight.json"));
            answers.put("/api/tunnel", text("tunnel.json"));
        }
        answers.put("/api/size", text("size.json"));
        answers.put("/api/hands", text(name.equals("hostile-names") ? "hands-hostile.json" : "hands.json"));
        return answers;
    }

    private static String text(String file) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(Story.class.getResourceAsStream("/rimeward/browser/" + file), file)) {
            return new String(in.readAllBytes(), UTF_8).replace("\n", "");
        }
    }
}
