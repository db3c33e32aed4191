package rimeward.sim.sweep;

import java.util.List;
import rimeward.sim.fault.Fault;
import rimeward.sim.scenario.StandDownAt;

/**
 * One thing that goes wrong, or that the grower asks for, at a moment that is still open.
 *
 * @param name as reports call it
 * @param faults with their beginnings counted from that moment
 * @param orders the same
 */
record Trouble(String name, List<Fault> faults, List<StandDownAt> orders) {
    Trouble {
        faults = List.copyOf(faults);
        orders = List.copyOf(orders);
    }

    List<Fault> faultsAt(long atS) {
        return faults.stream()
                .map(fault ->
                        new Fault(fault.atS() + atS, fault.kind(), fault.target(), fault.lastsS(), fault.magnitude()))
                .toList();
    }

    List<StandDownAt> ordersAt(long atS) {
        return orders.stream()
                .map(order -> new StandDownAt(order.atS() + atS, order.machineId(), order.forS()))
                .toList();
    }
}
