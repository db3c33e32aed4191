package rimeward.core.tunnel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The numbers of a {@link GreyBox} as words on a line, and the same tunnel with a larger loss. */
final class BoxText {
    private static final int COUNT = 13;

    private BoxText() {}

    /** The same tunnel, losing by so many times as much to outside. */
    static GreyBox.Numbers losing(GreyBox.Numbers is, double factor) {
        List<Double> all = new ArrayList<>(list(is));
        all.set(0, is.airLossWPerK() * factor);
        all.set(1, is.massLossWPerK() * factor);
        return numbers(all);
    }

    static String write(GreyBox.Numbers is) {
        return list(is).stream()
                .map(each -> String.format(Locale.ROOT, "%.6e", each))
                .collect(Collectors.joining(" "));
    }

    /** @throws IllegalArgumentException if it is not what {@link #write} writes */
    static GreyBox.Numbers read(String line) {
        List<Double> all =
                Arrays.stream(line.split(" ", -1)).map(Double::valueOf).toList();
        if (all.size() != COUNT || !all.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("\"" + line + "\" is no learned tunnel: it has " + COUNT + " numbers");
        }
        return numbers(all);
    }

    private static List<Double> list(GreyBox.Numbers is) {
        return List.of(
                is.airLossWPerK(),
                is.massLossWPerK(),
                is.massCouplingWPerK(),
                is.airCapacityJPerK(),
                is.massCapacityJPerK(),
                is.groundW(),
                is.skyK(),
                is.dryerYield(),
                is.sunOnMass(),
                is.sunStepW(),
                is.airNoiseK(),
                is.massNoiseK(),
                is.readNoiseK());
    }

    private static GreyBox.Numbers numbers(List<Double> all) {
        return new GreyBox.Numbers(
                all.get(0),
                all.get(1),
                all.get(2),
                all.get(3),
                all.get(4),
                all.get(5),
                all.get(6),
                all.get(7),
                all.get(8),
                all.get(9),
                all.get(10),
                all.get(11),
                all.get(12));
    }
}
