package rimeward.homie;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.judgement.Verdict;
import rimeward.core.reading.Reading;
import rimeward.site.Degrees;
import rimeward.site.Place;
import rimeward.site.Sensor;

/** A bench, or the outside air, as its sensor tells it. What is not believed is not told; the verdict says why. */
final class SensorNode {
    private SensorNode() {}

    static String id(Sensor sensor) {
        return (sensor.place().isInside() ? "bench-" : "outside-") + sensor.id();
    }

    /** @param at the sensor's place in the site's list */
    static Node of(Sensor sensor, int at, Degrees degrees) {
        List<Node.Leaf> leaves = new ArrayList<>();
        leaves.add(new Node.Leaf(
                Property.number("temperature", "Temperature", degrees.unit()),
                look -> believed(
                                        look.outcome().judgement().airVerdicts().get(at),
                                        look.outcome()
                                                .frame()
                                                .senses()
                                                .sensors()
                                                .get(at)
                                                .airC())
                                instanceof Reading.Value value
                        ? Shown.temperature(degrees, value.value())
                        : Shown.NOTHING));
        leaves.add(new Node.Leaf(
                Property.oneOf("temperature-verdict", "Whether its temperature is believed", Verdict.values()),
                look -> Shown.word(look.outcome().judgement().airVerdicts().get(at))));
        if (sensor.hasHumidity()) {
            leaves.add(new Node.Leaf(
                    Property.number("humidity", "Relative humidity", "%"),
                    look -> believed(
                                            look.outcome()
                                                    .judgement()
                                                    .rhVerdicts()
                                                    .get(at),
                                            look.outcome()
                                                    .frame()
                                                    .senses()
                                                    .sensors()
                                                    .get(at)
                                                    .rhPercent())
                                    instanceof Reading.Value value
                            ? Tree.percent(value.value())
                            : Shown.NOTHING));
            leaves.add(new Node.Leaf(
                    Property.oneOf("humidity-verdict", "Whether its humidity is believed", Verdict.values()),
                    look -> Shown.word(look.outcome().judgement().rhVerdicts().get(at))));
        }
        String name = sensor.place() instanceof Place.Bench bench ? bench.name() : "outside";
        return new Node(id(sensor), name, sensor.place().isInside() ? "bench" : "outside", leaves);
    }

    private static Reading believed(Verdict verdict, Reading reading) {
        return verdict.isTrusted() ? reading : Reading.NOT_FITTED;
    }
}
