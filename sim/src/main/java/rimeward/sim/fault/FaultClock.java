package rimeward.sim.fault;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * A {@link FaultPlan} as time goes through it; for one thread. Moving it is one comparison unless something begins or ends, and asking
 * for a kind looks at nothing but what is wrong now.
 */
public final class FaultClock {
    private final List<Fault> faults;
    private final double[] changesS;
    private final Map<FaultKind, List<Fault>> active = new EnumMap<>(FaultKind.class);
    private final List<Fault> begun = new ArrayList<>();
    private boolean calm = true;
    private int nextChange;
    private int nextFault;

    public FaultClock(FaultPlan plan) {
        faults = plan.faults();
        changesS = faults.stream()
                .flatMapToDouble(fault -> DoubleStream.of(fault.atS(), fault.endsS()))
                .filter(Double::isFinite)
                .sorted()
                .distinct()
                .toArray();
        for (FaultKind kind : FaultKind.values()) {
            active.put(kind, new ArrayList<>(2));
        }
    }

    /** Moves forwards; true if something began or ended on the way. */
    public boolean advanceTo(double elapsedS) {
        if (elapsedS < nextChangeS()) {
            return false;
        }
        begun.clear();
        while (elapsedS >= nextChangeS()) {
            nextChange++;
        }
        active.values().forEach(list -> list.removeIf(fault -> fault.endsS() <= elapsedS));
        for (; nextFault < faults.size() && faults.get(nextFault).atS() <= elapsedS; nextFault++) {
            Fault fault = faults.get(nextFault);
            begun.add(fault);
            if (fault.endsS() > elapsedS) {
                now(fault.kind()).add(fault);
            }
        }
        calm = active.values().stream().allMatch(List::isEmpty);
        return true;
    }

    /** When something next begins or ends, elapsed s; infinite if nothing will. */
    public double nextChangeS() {
        return nextChange < changesS.length ? changesS[nextChange] : Double.POSITIVE_INFINITY;
    }

    /** What began at the last change, moments included. */
    public List<Fault> begun() {
        return List.copyOf(begun);
    }

    /** Whether nothing at all is wrong: most of the time, and much cheaper to ask than for each kind. */
    public boolean isCalm() {
        return calm;
    }

    public boolean isActive(FaultKind kind) {
        return !calm && !now(kind).isEmpty();
    }

    public boolean isActive(FaultKind kind, String target) {
        for (Fault fault : now(kind)) {
            if (fault.target().equals(target)) {
                return true;
            }
        }
        return false;
    }

    /** The magnitudes of all such faults together, 0 if there is none. */
    public double magnitude(FaultKind kind, String target) {
        double sum = 0;
        for (Fault fault : now(kind)) {
            sum += fault.target().equals(target) ? fault.magnitude() : 0;
        }
        return sum;
    }

    /** Those of one kind that are at work now. */
    public List<Fault> active(FaultKind kind) {
        return List.copyOf(now(kind));
    }

    @SuppressWarnings("NullAway") // the constructor fills in every kind
    private List<Fault> now(FaultKind kind) {
        return active.get(kind);
    }
}
