package rimeward.page;

import java.util.OptionalDouble;
import rimeward.core.Outcome;
import rimeward.core.reading.Reading;
import rimeward.site.Place;
import rimeward.site.Site;

/** What is believed of one tick. */
final class Believed {
    private Believed() {}

    static OptionalDouble airC(Outcome outcome, int sensor) {
        return outcome.judgement().airVerdicts().get(sensor).isTrusted()
                ? value(outcome.frame().senses().sensors().get(sensor).airC())
                : OptionalDouble.empty();
    }

    static OptionalDouble rhPercent(Outcome outcome, int sensor) {
        return outcome.judgement().rhVerdicts().get(sensor).isTrusted()
                ? value(outcome.frame().senses().sensors().get(sensor).rhPercent())
                : OptionalDouble.empty();
    }

    private static OptionalDouble value(Reading reading) {
        return reading instanceof Reading.Value value ? OptionalDouble.of(value.value()) : OptionalDouble.empty();
    }

    static String place(Site site, int sensor) {
        return site.sensors().get(sensor).place() instanceof Place.Bench bench ? bench.name() : "outside";
    }
}
