package rimeward.record;

import java.util.List;
import java.util.OptionalDouble;
import rimeward.core.Outcome;
import rimeward.core.decision.Reason;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.core.judgement.Verdict;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.watch.Delivery;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * One kept frame with what was made of it: enough to hand the same frame and outlook to other logic, and to compare.
 *
 * @param change whether something changed, or it is only the minute's row
 * @param outageS how long there was no controller before it, s
 * @param wish what the law would have liked
 * @param reasons one for each machine, as the guard left them
 */
public record FrameRow(
        Frame frame,
        boolean change,
        double outageS,
        Trust trust,
        Holder holder,
        RelaySet wish,
        RelaySet closed,
        RelaySet overruled,
        List<Reason> reasons,
        List<Verdict> airVerdicts,
        List<Verdict> rhVerdicts,
        List<Delivery> deliveries,
        Outlook outlook) {

    public static FrameRow of(Outcome outcome, boolean change) {
        return new FrameRow(
                outcome.frame(),
                change,
                outcome.outageS(),
                outcome.judgement().trust(),
                outcome.guarded().holder(),
                outcome.decision().wish(),
                outcome.guarded().closed(),
                outcome.guarded().overruled(),
                List.copyOf(outcome.guarded().reasons()),
                List.copyOf(outcome.judgement().airVerdicts()),
                List.copyOf(outcome.judgement().rhVerdicts()),
                List.copyOf(outcome.deliveries().each()),
                outcome.outlook());
    }

    /** A sensor's temperature, where there was one and it was believed, °C. */
    public OptionalDouble believedAirC(int sensor) {
        return believed(
                airVerdicts.get(sensor), frame.senses().sensors().get(sensor).airC());
    }

    /** The same of its relative humidity, %. */
    public OptionalDouble believedRhPercent(int sensor) {
        return believed(
                rhVerdicts.get(sensor), frame.senses().sensors().get(sensor).rhPercent());
    }

    /** The first outside sensor whose temperature was believed; negative without one. */
    public int firstBelievedOutside(Site site) {
        for (int i = 0; i < site.sensors().size(); i++) {
            if (!site.sensors().get(i).place().isInside() && believedAirC(i).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    private static OptionalDouble believed(Verdict verdict, Reading reading) {
        return verdict.isTrusted() && reading instanceof Reading.Value value
                ? OptionalDouble.of(value.value())
                : OptionalDouble.empty();
    }
}
