package rimeward.core.outlook;

import java.util.List;

/** {@link ForecastErrors} as lines: its version, then each lead by night, each by day, and the night's lowest. */
final class ErrorsText {
    private static final String FIRST = "forecast-errors 1";

    private ErrorsText() {}

    static String write(ForecastErrors errors) {
        StringBuilder out = new StringBuilder(FIRST).append('\n');
        for (List<LeadErrors> all : List.of(errors.night(), errors.day(), List.of(errors.lowest()))) {
            for (LeadErrors each : all) {
                out.append(each.nights() + " " + Words.of(each.biasK()) + " " + Words.of(each.spreadK()))
                        .append('\n');
            }
        }
        return out.toString();
    }

    static ForecastErrors read(String text, int leads) {
        List<String> lines = text.lines().toList();
        int count = 2 + 2 * leads;
        if (lines.size() != count || !lines.get(0).equals(FIRST)) {
            throw new IllegalArgumentException(
                    "what was learned of a forecast begins with \"" + FIRST + "\" and has " + count + " lines");
        }
        List<LeadErrors> all = lines.stream().skip(1).map(ErrorsText::line).toList();
        return new ForecastErrors(all.subList(0, leads), all.subList(leads, 2 * leads), all.get(2 * leads));
    }

    private static LeadErrors line(String line) {
        Words words = new Words(line, 3);
        return new LeadErrors(words.count(0), words.number(1), words.number(2));
    }
}
