package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import rimeward.sim.run.Trace;
import rimeward.strip.Spell;
import rimeward.strip.Stretch;

/** Times during which something held in a trace; a row holds until the next. */
final class Spells {
    private Spells() {}

    static List<Spell> where(Trace trace, long endS, IntPredicate holds) {
        List<Spell> spells = new ArrayList<>();
        int first = -1;
        for (int row = 0; row < trace.rows(); row++) {
            boolean now = holds.test(row);
            if (now && first < 0) {
                first = row;
            } else if (!now && first >= 0) {
                spells.add(new Spell(trace.epochS(first), trace.epochS(row)));
                first = -1;
            }
        }
        if (first >= 0 && endS > trace.epochS(first)) {
            spells.add(new Spell(trace.epochS(first), endS));
        }
        return spells;
    }

    static List<Stretch> shaded(String kind, Trace trace, long endS, IntPredicate holds) {
        return where(trace, endS, holds).stream()
                .map(spell -> new Stretch(kind, spell.fromS(), spell.toS()))
                .toList();
    }

    static long totalS(List<Spell> spells) {
        return spells.stream().mapToLong(spell -> spell.toS() - spell.fromS()).sum();
    }
}
