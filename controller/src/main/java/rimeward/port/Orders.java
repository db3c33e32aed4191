package rimeward.port;

import java.util.List;
import rimeward.core.order.Order;

/** Where the grower's orders come from. */
public interface Orders {
    /** What was asked for since the last time, oldest first: a few at most. Never blocks and never throws. */
    List<Order> take();

    /** Nobody asks for anything. */
    static Orders none() {
        return List::of;
    }
}
