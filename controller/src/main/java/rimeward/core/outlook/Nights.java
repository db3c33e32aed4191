package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;

/**
 * One night in the likeliest world and in those around it. What comes out is a number and its spread: each doubt's effect, to
 * either side halved, summed as squares (first-order propagation; GUM, JCGM 100:2008, 5.1.2, doubts taken to be independent).
 */
record Nights(NightRun likeliest, List<Around> around) {
    record Around(NightRun less, NightRun more) {}

    static Nights of(Tonight night, TunnelEstimate estimate, NightLaw.Maker law) {
        List<Around> around = new ArrayList<>();
        for (World.Pair pair : World.around(estimate, night.start(), night.choices())) {
            around.add(new Around(NightRun.of(night, pair.less(), law), NightRun.of(night, pair.more(), law)));
        }
        return new Nights(NightRun.of(night, World.likeliest(estimate), law), around);
    }

    Figure figure(ToDoubleFunction<NightRun> what) {
        double squares = 0;
        for (Around pair : around) {
            double half = (what.applyAsDouble(pair.more) - what.applyAsDouble(pair.less)) / 2;
            squares += half * half;
        }
        return new Figure(what.applyAsDouble(likeliest), StrictMath.sqrt(squares));
    }

    /** The difference that another law makes, world by world: what both get wrong alike cancels. */
    Figure figureLess(Nights other, ToDoubleFunction<NightRun> what) {
        double squares = 0;
        for (int i = 0; i < around.size(); i++) {
            double more = what.applyAsDouble(around.get(i).more) - what.applyAsDouble(other.around.get(i).more);
            double less = what.applyAsDouble(around.get(i).less) - what.applyAsDouble(other.around.get(i).less);
            squares += (more - less) * (more - less) / 4;
        }
        double value = what.applyAsDouble(likeliest) - what.applyAsDouble(other.likeliest);
        return new Figure(value, StrictMath.sqrt(squares));
    }

    /** Chance that the heat at hand is less than the floor needs, at a step. */
    double chanceCold(int step) {
        return Below.zero(spareW(step));
    }

    Figure spareW(int step) {
        return figure(run -> run.moments().get(step).spareW());
    }
}
