package rimeward.sim.weather;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

/** What a table writes where nothing was measured. A mark of {@code -9999} also means the cell {@code -9999.0}. */
record MissingMarks(Set<String> texts, Set<Double> numbers) {
    // Java would also take "1d", "NaN" and "0x1p3", which no weather service writes.
    private static final Pattern NUMBER = Pattern.compile("[-+]?([0-9]+[.]?[0-9]*|[.][0-9]+)([eE][-+]?[0-9]+)?");

    static MissingMarks of(Collection<String> everywhere, Collection<String> here) {
        var texts = new HashSet<>(everywhere);
        texts.addAll(here);
        var numbers = new HashSet<Double>();
        texts.stream().filter(MissingMarks::isNumber).map(Double::valueOf).forEach(numbers::add);
        return new MissingMarks(Set.copyOf(texts), Set.copyOf(numbers));
    }

    static boolean isNumber(String cell) {
        return NUMBER.matcher(cell).matches();
    }

    boolean hold(String cell) {
        return texts.contains(cell) || (isNumber(cell) && numbers.contains(Double.valueOf(cell)));
    }
}
