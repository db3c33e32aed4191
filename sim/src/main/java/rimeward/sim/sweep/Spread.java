package rimeward.sim.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What a sweep comes to.
 *
 * @param build by which program
 * @param days length of each winter
 * @param winters how many
 * @param standings one for each law, ours first
 * @param lines one for each measure and law, laws within measures
 * @param troubles in how many winters each went wrong, by name
 * @param failed winters in which a property was broken, by seed
 */
public record Spread(
        String build,
        int days,
        int winters,
        List<Standing> standings,
        List<Line> lines,
        Map<String, Integer> troubles,
        List<WinterLine> failed) {

    /**
     * How a law stands beside ours.
     *
     * @param held winters in which no bench met the floor
     * @param bothHeld winters in which neither under this law nor under ours one did
     * @param dearerKWh what this law took more than ours there, in the middle; empty where both held none
     * @param damperH for how much longer it was above the humidity target there, in the middle; empty likewise
     */
    public record Standing(String law, int held, int bothHeld, OptionalDouble dearerKWh, OptionalDouble damperH) {}

    public record Line(Measured measured, String law, Quantiles spread) {}

    /** @param winters at least one */
    public static Spread of(String build, int days, List<WinterLine> winters) {
        List<String> laws =
                winters.stream()
                        .max(Comparator.comparingInt(winter -> winter.laws().size()))
                        .orElseThrow()
                        .laws()
                        .stream()
                        .map(LawLine::law)
                        .toList();
        List<Line> lines = new ArrayList<>();
        for (Measured measured : Measured.values()) {
            for (String law : laws) {
                lines.add(new Line(
                        measured,
                        law,
                        Quantiles.of(under(law, winters).stream()
                                .mapToDouble(measured::of)
                                .toArray())));
            }
        }
        return new Spread(
                build,
                days,
                winters.size(),
                laws.stream().map(law -> standing(law, laws.get(0), winters)).toList(),
                lines,
                troubles(winters),
                winters.stream().filter(winter -> !winter.broken().isEmpty()).toList());
    }

    private static List<LawLine> under(String law, List<WinterLine> winters) {
        return winters.stream()
                .flatMap(winter -> winter.laws().stream())
                .filter(line -> line.law().equals(law))
                .toList();
    }

    private static Standing standing(String law, String ours, List<WinterLine> winters) {
        List<double[]> differences = new ArrayList<>();
        int held = 0;
        for (WinterLine winter : winters) {
            List<LawLine> theirs = under(law, List.of(winter));
            List<LawLine> own = under(ours, List.of(winter));
            boolean holds = !theirs.isEmpty() && theirs.get(0).marginK() >= 0;
            held += holds ? 1 : 0;
            if (holds && !own.isEmpty() && own.get(0).marginK() >= 0) {
                differences.add(new double[] {
                    theirs.get(0).kWh() - own.get(0).kWh(),
                    theirs.get(0).dampH() - own.get(0).dampH()
                });
            }
        }
        return new Standing(law, held, differences.size(), middle(differences, 0), middle(differences, 1));
    }

    private static OptionalDouble middle(List<double[]> differences, int which) {
        return differences.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Quantiles.of(differences.stream()
                                .mapToDouble(each -> each[which])
                                .toArray())
                        .median());
    }

    private static Map<String, Integer> troubles(List<WinterLine> winters) {
        Map<String, Integer> counts = new TreeMap<>();
        for (WinterLine winter : winters) {
            for (String trouble : winter.troubles()) {
                String name = trouble.contains(" after ") ? trouble.substring(0, trouble.indexOf(" after ")) : "storm";
                counts.merge(name, 1, Integer::sum);
            }
            if (winter.troubles().isEmpty()) {
                counts.merge("nothing", 1, Integer::sum);
            }
        }
        return counts;
    }

    /** Whether no property was broken in any winter. */
    public boolean isGood() {
        return failed.isEmpty();
    }
}
