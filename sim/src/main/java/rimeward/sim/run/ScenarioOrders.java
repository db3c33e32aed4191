package rimeward.sim.run;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.order.Order;
import rimeward.port.Orders;
import rimeward.sim.scenario.StandDownAt;
import rimeward.sim.world.World;

/** What a scenario's grower asks for, each when its time has come. For one thread. */
final class ScenarioOrders implements Orders {
    private final World world;
    private final List<StandDownAt> all;
    private int given;

    ScenarioOrders(World world, List<StandDownAt> all) {
        this.world = world;
        this.all = all;
    }

    @Override
    public List<Order> take() {
        if (given == all.size() || all.get(given).atS() > world.elapsedS()) {
            return List.of();
        }
        List<Order> due = new ArrayList<>();
        while (given < all.size() && all.get(given).atS() <= world.elapsedS()) {
            StandDownAt next = all.get(given++);
            due.add(new Order.StandDown(next.machineId(), next.forS()));
        }
        return due;
    }
}
