package rimeward.sim.sweep;

import java.util.List;

/**
 * What one winter came to.
 *
 * @param weather how its weather came about
 * @param cover what covers the tunnel
 * @param dryer which kind of dryer there is, or none
 * @param troubles what goes wrong and when, in words; empty for nothing
 * @param laws ours first
 * @param broken properties that did not hold under our law; empty is good
 */
public record WinterLine(
        long seed,
        String weather,
        String cover,
        String dryer,
        List<String> troubles,
        List<LawLine> laws,
        List<Broken> broken) {
    public WinterLine {
        troubles = List.copyOf(troubles);
        laws = List.copyOf(laws);
        broken = List.copyOf(broken);
    }
}
