package rimeward.sim.scenario;

import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import rimeward.adapter.config.BadSettings;
import rimeward.adapter.config.Faults;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.TableReader;
import rimeward.adapter.config.TomlTree;

/**
 * What a law must reach.
 *
 * @param limits in the gates' order
 */
public record Gates(Map<Gate, Double> limits) {
    public static final Gates NONE = new Gates(Map.of());

    public Gates {
        Map<Gate, Double> ordered = new EnumMap<>(Gate.class);
        ordered.putAll(limits);
        limits = Collections.unmodifiableMap(ordered);
    }

    /**
     * Reads a gates file: one table, {@code [gates]}.
     *
     * @throws BadInput with everything that is wrong with it
     */
    public static Gates of(Path file) throws BadInput {
        try {
            return read(file);
        } catch (BadSettings e) {
            throw new BadInput(String.valueOf(e.getMessage()), e);
        }
    }

    static Gates read(Path file) {
        Faults faults = new Faults();
        Gates gates = read(faults.reader(TomlTree.read(file)).table("gates"));
        faults.throwIfAny();
        return gates;
    }

    static Gates read(TableReader table) {
        Map<Gate, Double> limits = new EnumMap<>(Gate.class);
        for (Gate gate : Gate.all()) {
            table.find(gate.key(), Kinds.number(gate.least(), gate.most())).ifPresent(limit -> limits.put(gate, limit));
        }
        return new Gates(limits);
    }

    /** These, with the others' where both have one. */
    Gates with(Gates others) {
        Map<Gate, Double> limits = new EnumMap<>(Gate.class);
        limits.putAll(this.limits);
        limits.putAll(others.limits);
        return new Gates(limits);
    }
}
