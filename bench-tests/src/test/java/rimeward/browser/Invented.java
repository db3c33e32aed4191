package rimeward.browser;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Invented columns and nights, as JSON: made for looking at the page, no check of anything rests on their values being likely. */
final class Invented {
    private static final double DAY_S = 86_400;

    private Invented() {}

    /** A night's or a day's columns; outside is coldest at the last of these times. */
    static String columns(long startEpochS, int stepS, int rows, double meanC, double swingC, long coldestAtS) {
        Map<String, List<String>> each = new LinkedHashMap<>();
        List.of("coldestC", "outsideC", "rhPercent", "dewPointC", "heaterW", "dryerW", "floorC")
                .forEach(name -> each.put(name, new ArrayList<>()));
        for (int i = 0; i < rows; i++) {
            double outsideC = meanC
                    - swingC
                            * StrictMath.cos(
                                    2 * StrictMath.PI * (startEpochS + (double) i * stepS - coldestAtS) / DAY_S);
            double needW = Math.max(0, 185 * (5 - outsideC));
            double ripple = 0.4 * StrictMath.sin(i * stepS / 700.0);
            double coldestC = Math.max(5 + ripple, outsideC + 3);
            double rhPercent = Math.max(55, Math.min(92, 84 - needW / 120 + 5 * StrictMath.sin(i * stepS / 9000.0)));
            boolean isHole = i > rows / 3 && i < rows / 3 + Math.max(2, rows / 60);
            put(each, "coldestC", isHole, coldestC);
            put(each, "outsideC", false, outsideC);
            put(each, "rhPercent", isHole, rhPercent);
            put(each, "dewPointC", isHole, coldestC - (100 - rhPercent) / 5);
            put(
                    each,
                    "heaterW",
                    false,
                    needW > 3000 * (0.5 + 0.5 * StrictMath.sin(i * stepS / 500.0)) && needW > 150
                            ? (needW > 1500 ? 3000 : 1500)
                            : 0);
            put(each, "dryerW", false, rhPercent > 84 ? 550 : 0);
            put(each, "floorC", false, 4);
        }
        StringBuilder out =
                new StringBuilder("{\"startEpochS\":" + startEpochS + ",\"stepS\":" + stepS + ",\"columns\":{");
        String mark = "";
        for (Map.Entry<String, List<String>> column : each.entrySet()) {
            out.append(mark)
                    .append('"')
                    .append(column.getKey())
                    .append("\":[")
                    .append(String.join(",", column.getValue()))
                    .append(']');
            mark = ",";
        }
        return out.append("}}").toString();
    }

    private static void put(Map<String, List<String>> each, String name, boolean isHole, double value) {
        each.getOrDefault(name, new ArrayList<>()).add(isHole ? "null" : String.format(Locale.ROOT, "%.2f", value));
    }

    /** So many nights, the newest first. */
    static String nights(LocalDate newest, int count) {
        List<String> each = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            each.add(night(newest.minusDays(i), i));
        }
        return "{\"nights\":[" + String.join(",", each) + "],\"currency\":\"GBP\"}";
    }

    static String night(LocalDate night, int i) {
        double winter = StrictMath.sin(StrictMath.PI * Math.min(1, (i + 40) / 240.0));
        double outsideC = 6 - 11 * winter + 4 * StrictMath.sin(i * 0.9) + 2.5 * StrictMath.sin(i * 0.37);
        double lowestC = Math.max(4.4 + 0.3 * StrictMath.sin(i * 1.7), outsideC + 2.5);
        boolean isBad = i == 33;
        double kwh = Math.max(0, 185 * (5 - outsideC) * 11 / 1000);
        return String.format(
                Locale.ROOT,
                "{\"night\":\"%s\",\"lowestC\":%.2f,\"lowestBench\":\"north bench\",\"outsideLowestC\":%.2f,\"kwh\":%.2f,\"cost\":%.2f,\"litres\":%.2f,"
                        + "\"underFloorS\":%d,\"belowGuard\":0,\"alerts\":%d,\"report\":true,\"plan\":{\"lowestC\":%.2f,\"kwh\":%.2f}}",
                night,
                isBad ? 2.9 : lowestC,
                outsideC,
                kwh,
                kwh * 0.19,
                Math.max(0, 1.6 - kwh / 20),
                isBad ? 2820 : 0,
                isBad ? 4 : i % 9 == 0 ? 1 : 0,
                lowestC - 0.2,
                kwh * 1.07);
    }
}
