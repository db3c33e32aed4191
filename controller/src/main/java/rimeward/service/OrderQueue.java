package rimeward.service;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import rimeward.core.order.Order;
import rimeward.port.Orders;

/** Orders on their way from an edge's thread to the control loop's. For any thread; nobody waits for anybody. */
public final class OrderQueue implements Orders {
    /** More than any person asks for between two ticks. Own choice. */
    public static final int MOST_WAITING = 16;

    /** So that even a flood takes a tick no longer. Own choice. */
    public static final int MOST_A_TICK = 4;

    private final ArrayBlockingQueue<Order> waiting = new ArrayBlockingQueue<>(MOST_WAITING);

    /** Whether there was room: if not, the order is lost, and whoever asked should hear so. */
    public boolean offer(Order order) {
        return waiting.offer(order);
    }

    @Override
    public List<Order> take() {
        if (waiting.isEmpty()) {
            return List.of();
        }
        List<Order> taken = new ArrayList<>(MOST_A_TICK);
        waiting.drainTo(taken, MOST_A_TICK);
        return taken;
    }
}
