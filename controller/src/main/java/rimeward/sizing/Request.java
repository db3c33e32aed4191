package rimeward.sizing;

import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Set;
import rimeward.site.Circuit;
import rimeward.site.Tariff;

/**
 * What a sheet is asked for: every input said or assumed.
 *
 * @param done measures taken already, or decided
 * @param tariff prices; with their currency
 * @param zone whose clock they go by
 */
public record Request(Inputs inputs, Cover cover, Cover ends, Set<Measure> done, Tariff tariff, ZoneId zone) {
    public Request {
        done = Set.copyOf(done);
    }

    /** What the controller holds, °C: its band lies above the floor. */
    public double heldC() {
        return inputs.of(Input.FLOOR) + inputs.of(Input.HOLD_ABOVE);
    }

    public Shape shape() {
        double widthM = inputs.of(Input.WIDTH);
        double heightM = inputs.of(Input.HEIGHT);
        double lengthM = inputs.of(Input.LENGTH);
        return inputs.has(Input.EAVES)
                ? new Shape.Ridge(widthM, inputs.of(Input.EAVES), heightM, lengthM)
                : new Shape.Hoop(widthM, heightM, lengthM);
    }

    /** The tunnel with what is done already, in the order of {@link Measure}. */
    House house() {
        House house = new House(
                shape().areas(),
                inputs.of(Input.COVER_LOSS),
                inputs.of(Input.ENDS_LOSS),
                inputs.of(Input.AIR_CHANGES),
                inputs.of(Input.EDGE_LOSS),
                House.airWhPerM3K(heldC(), inputs.of(Input.ALTITUDE)));
        for (Measure measure : EnumSet.allOf(Measure.class)) {
            house = done.contains(measure) ? after(house, measure) : house;
        }
        return house;
    }

    House after(House house, Measure measure) {
        return measure.applyTo(house, shape(), inputs.of(Input.HEATED_SHARE));
    }

    Circuit circuit() {
        return new Circuit(
                inputs.of(Input.VOLTAGE),
                inputs.of(Input.FUSE),
                inputs.of(Input.CONTINUOUS),
                inputs.of(Input.OTHER_LOAD),
                0);
    }

    /** What a heater must give at the design temperature, W. */
    double neededW(Loss loss) {
        return loss.totalWPerK() * (heldC() - inputs.of(Input.OUTSIDE));
    }

    /** The same with its margin, W. */
    double wantedW(Loss loss) {
        return neededW(loss) * (1 + inputs.of(Input.MARGIN) / 100);
    }

    private String plain(Input input) {
        return Inputs.plain(inputs.of(input));
    }

    /** Refuses what cannot go together. */
    void requireSense() throws Refused {
        if (inputs.has(Input.EAVES) && inputs.of(Input.EAVES) >= inputs.of(Input.HEIGHT)) {
            inputs.refuse(
                    inputs.name("eaves_m") + " is " + plain(Input.EAVES) + " and " + inputs.name("height_m") + " is "
                            + plain(Input.HEIGHT)
                            + "; the ridge must be higher than the eaves: measure both from the ground");
        }
        if (inputs.of(Input.OUTSIDE) >= heldC()) {
            inputs.refuse(inputs.name("outside_C") + " is " + plain(Input.OUTSIDE) + " ("
                    + inputs.find(Input.OUTSIDE).orElseThrow().from() + "); it must lie below the "
                    + Inputs.plain(heldC())
                    + " °C that are held, or no heater is needed: give the coldest night you remember");
        }
        if (circuit().limitW() <= 0) {
            inputs.refuse(
                    inputs.name("other_load_W") + " is " + plain(Input.OTHER_LOAD)
                            + "; that leaves nothing of what the circuit carries for hours on end: move that load, or take another circuit");
        }
        for (Measure measure : EnumSet.allOf(Measure.class)) {
            if (done.contains(measure) && measure.isPartOf(cover, ends)) {
                inputs.refuse(inputs.name("insulation") + " names " + measure.word()
                        + ", and the cover has it already: leave one of the two out");
            }
        }
        inputs.throwIfRefused();
    }
}
