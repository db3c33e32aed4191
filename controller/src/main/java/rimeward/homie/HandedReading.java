package rimeward.homie;

import java.util.Optional;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.json.Json;

/**
 * What somebody else's sensor says in a message: {@code {"air_C": 4.1, "rh_percent": 83}}, one of the two at least, or a bare number,
 * which is the air's temperature in °C. Other members are for others. Whether it is plausible, control judges.
 */
public sealed interface HandedReading {
    /** The longest message that is looked at, bytes: sensors like to add a battery, a signal and a name. */
    int MOST_BYTES = 1024;

    /** A reading, taken now. */
    record Taken(SensorReading reading) implements HandedReading {}

    /** No reading. */
    record Refused(String why) implements HandedReading {}

    /** @param retained kept by the broker since nobody knows when: a temperature without an age is none */
    static HandedReading read(byte[] payload, boolean retained) {
        if (retained) {
            return new Refused("it is retained, so nobody knows how old it is; send it without");
        }
        try {
            return of(Payload.json(Payload.text(payload, MOST_BYTES)));
        } catch (Misheard e) {
            return new Refused(e.why());
        }
    }

    private static HandedReading of(Json json) throws Misheard {
        if (json instanceof Json.Figure airC) {
            return new Taken(new SensorReading(new Reading.Value(airC.value(), 0), Reading.NOT_FITTED));
        }
        Reading airC = number(json, "air_C");
        Reading rhPercent = number(json, "rh_percent");
        if (airC instanceof Reading.NotFitted && rhPercent instanceof Reading.NotFitted) {
            throw new Misheard("it has neither \"air_C\" nor \"rh_percent\"");
        }
        return new Taken(new SensorReading(airC, rhPercent));
    }

    private static Reading number(Json json, String name) throws Misheard {
        Optional<Json> found = json.get(name);
        if (found.isEmpty()) {
            return Reading.NOT_FITTED;
        }
        if (found.get() instanceof Json.Figure figure) {
            return new Reading.Value(figure.value(), 0);
        }
        throw new Misheard("\"" + name + "\" is no number");
    }
}
