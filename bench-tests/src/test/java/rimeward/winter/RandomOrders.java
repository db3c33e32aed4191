package rimeward.winter;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.port.Orders;
import rimeward.sim.fault.SeededStream;
import rimeward.site.Site;

/** A grower who cannot leave it alone: orders of every kind, sensible and not, one every few minutes and now and then a storm. */
final class RandomOrders implements Orders {
    private static final int ONE_TICK_IN = 60;
    private static final int STORM = 6;

    private final Site site;
    private final SeededStream luck;

    RandomOrders(Site site, long seed) {
        this.site = site;
        luck = SeededStream.named(seed, "orders");
    }

    @Override
    public List<Order> take() {
        if (luck.below(ONE_TICK_IN) > 0) {
            return List.of();
        }
        List<Order> all = new ArrayList<>();
        for (int left = luck.below(10) == 0 ? STORM : 1; left > 0; left--) {
            all.add(one());
        }
        return all;
    }

    private Order one() {
        return switch (luck.below(6)) {
            case 0 -> new Order.Acknowledge("no-such-alert-" + luck.below(9));
            case 1 -> new Order.SetFloor(luck.between(site.floorC() - 3, site.floorC() + 3));
            case 2 -> new Order.PlanNow();
            case 3 ->
                new Order.HandForecast(new Outlook.Night(
                        luck.below(9), luck.between(-60, 40), luck.between(0, 20), luck.between(0, 172_800)));
            default -> standDown();
        };
    }

    /** Mostly for minutes, now and then for hours. */
    private Order standDown() {
        List<String> ids = site.machineIds();
        double mostS = luck.below(8) == 0 ? Order.StandDown.LONGEST_S : 900;
        return new Order.StandDown(ids.get(luck.below(ids.size())), luck.below(3) == 0 ? 0 : luck.between(0, mostS));
    }
}
