package rimeward.sim.world;

import java.util.Arrays;
import java.util.List;
import rimeward.sim.fault.FaultClock;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.Tunnel;

/** The relays' contacts: what was asked of them, what faults make of it, and how often they closed. For one thread. */
final class Contacts {
    private final Tunnel tunnel;
    private final FaultClock faults;
    private final List<String> ids;
    private final int stages;
    private final int dryer;
    private final boolean[] asked;
    private final boolean[] closed;
    private final int[] starts;
    private final double[] dueS;
    private double nextDueS = Double.POSITIVE_INFINITY;

    Contacts(Tunnel tunnel, FaultClock faults, List<String> ids, MachineParameters machines) {
        this.tunnel = tunnel;
        this.faults = faults;
        this.ids = ids;
        stages = machines.heater().stagesW().size();
        dryer = machines.dryer() instanceof DryerParameters.None ? -1 : stages;
        asked = new boolean[ids.size()];
        closed = new boolean[ids.size()];
        starts = new int[ids.size()];
        dueS = new double[ids.size()];
        Arrays.fill(dueS, Double.POSITIVE_INFINITY);
    }

    /** Asks a contact to be so from a time on; the last word counts. What is on its way already is not delayed by being asked again. */
    void ask(int machine, boolean shut, double atS) {
        if (dueS[machine] != Double.POSITIVE_INFINITY) {
            if (asked[machine] != shut) {
                dueS[machine] = Math.min(dueS[machine], atS);
                findNextDue();
                return;
            }
            asked[machine] = !asked[machine]; // what was still under way happens now
            settle();
        }
        dueS[machine] = asked[machine] == shut ? Double.POSITIVE_INFINITY : atS;
        findNextDue();
    }

    double nextDueS() {
        return nextDueS;
    }

    void move(double elapsedS) {
        for (int machine = 0; machine < dueS.length; machine++) {
            if (dueS[machine] <= elapsedS) {
                asked[machine] = !asked[machine];
                dueS[machine] = Double.POSITIVE_INFINITY;
            }
        }
        findNextDue();
        settle();
    }

    private void findNextDue() {
        nextDueS = Double.POSITIVE_INFINITY;
        for (double at : dueS) {
            nextDueS = Math.min(nextDueS, at);
        }
    }

    /** Lets the faults of the moment have their way with the contacts. */
    void settle() {
        for (int machine = 0; machine < asked.length; machine++) {
            boolean shut = isWelded(machine) || (asked[machine] && !isStuckOpen(machine));
            if (shut != closed[machine]) {
                starts[machine] += shut ? 1 : 0;
                closed[machine] = shut;
                connect(machine, shut);
            }
        }
    }

    private boolean isWelded(int machine) {
        return machine < stages
                ? faults.isActive(FaultKind.HEATER_RELAY_WELDED, ids.get(machine))
                : machine == dryer && faults.isActive(FaultKind.DRYER_RELAY_WELDED);
    }

    private boolean isStuckOpen(int machine) {
        return machine < stages
                ? faults.isActive(FaultKind.HEATER_RELAY_OPEN, ids.get(machine))
                : machine == dryer && faults.isActive(FaultKind.DRYER_RELAY_OPEN);
    }

    private void connect(int machine, boolean shut) {
        if (machine < stages) {
            tunnel.heater().contact(machine, shut);
        } else if (machine == dryer) {
            tunnel.dryer().contact(shut);
        } else {
            tunnel.openings().fanContact(shut);
        }
    }

    int size() {
        return closed.length;
    }

    boolean isClosed(int machine) {
        return closed[machine];
    }

    int starts(int machine) {
        return starts[machine];
    }

    double powerW(int machine) {
        if (machine < stages) {
            return tunnel.heater().powerW(machine);
        }
        return machine == dryer ? tunnel.dryer().powerW() : tunnel.openings().powerW();
    }

    double energyJ(int machine) {
        if (machine < stages) {
            return tunnel.heater().energyJ(machine);
        }
        return machine == dryer ? tunnel.dryer().energyJ() : tunnel.openings().energyJ();
    }
}
