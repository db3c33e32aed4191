package rimeward.fitting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * One lump of air, a first stage behind its own thermostat, the other stages without one, and a person who types a line as soon as one is
 * awaited. Time passes only when somebody waits.
 */
final class SmallTunnel implements Sensors, Relays, Clock, Person {
    private static final double HEAT_LOSS_W_PER_K = 60;
    private static final double CAPACITY_J_PER_K = 400_000;

    private final Site site;
    private final Deque<String> lines = new ArrayDeque<>();
    private final List<String> said = new ArrayList<>();
    private final List<RelaySet> switched = new ArrayList<>();
    private RelaySet closed;
    private boolean thermostatOn;
    private double nowS;
    private double airC;
    double outsideC;
    double onC;
    double offC;
    boolean sensorsLost;
    boolean metered = true;
    double coldestC = Double.POSITIVE_INFINITY;
    double warmestC = Double.NEGATIVE_INFINITY;

    SmallTunnel(Site site, double airC, double outsideC) {
        this.site = site;
        this.airC = airC;
        this.outsideC = outsideC;
        closed = site.stopState();
    }

    SmallTunnel dial(double dialOnC, double dialOffC) {
        onC = dialOnC;
        offC = dialOffC;
        return this;
    }

    SmallTunnel types(String... text) {
        Collections.addAll(lines, text);
        return this;
    }

    List<String> said() {
        return said;
    }

    /** What was closed, each change once. */
    List<RelaySet> switched() {
        return switched;
    }

    RelaySet closed() {
        return closed;
    }

    // ---- the tunnel

    @Override
    public double nowS() {
        return nowS;
    }

    @Override
    public void waitS(double seconds) {
        nowS += seconds;
        thermostatOn = airC <= onC || (thermostatOn && airC < offC);
        airC += (heatW() - HEAT_LOSS_W_PER_K * (airC - outsideC)) * seconds / CAPACITY_J_PER_K;
        coldestC = StrictMath.min(coldestC, airC);
        warmestC = StrictMath.max(warmestC, airC);
    }

    private double heatW() {
        double sumW = 0;
        for (int stage = 0; stage < site.heater().stages().size(); stage++) {
            sumW += powerW(stage);
        }
        return sumW;
    }

    private double powerW(int machine) {
        boolean runs = closed.has(machine) && (machine != 0 || thermostatOn);
        return runs ? site.machines().get(machine).ratedW() : 0;
    }

    @Override
    public Senses latch() {
        Reading air = sensorsLost ? Reading.NO_ANSWER : new Reading.Value(airC, 0);
        List<SensorReading> readings =
                Collections.nCopies(site.sensors().size(), new SensorReading(air, Reading.NOT_FITTED));
        List<Reading> powersW = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            powersW.add(metered ? new Reading.Value(powerW(i), 0) : Reading.NOT_FITTED);
        }
        return new Senses(readings, powersW, Signal.NOT_FITTED, Signal.NOT_FITTED);
    }

    @Override
    public void close(RelaySet set) {
        if (!set.equals(closed)) {
            switched.add(set);
        }
        closed = set;
    }

    // ---- the person

    @Override
    public void say(String text) {
        said.add(text);
    }

    @Override
    public String ask(String question) {
        return lines.isEmpty() ? "q" : lines.removeFirst();
    }

    /** Answers only when a mark's name is awaited: the last thing said asks for it, or warns while waiting. */
    @Override
    public Optional<String> typed() {
        String last = said.isEmpty() ? "" : said.get(said.size() - 1);
        return last.startsWith("Set the dial") ? Optional.of(ask("")) : Optional.empty();
    }
}
