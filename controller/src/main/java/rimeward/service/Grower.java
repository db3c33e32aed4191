package rimeward.service;

import java.util.function.Consumer;
import rimeward.core.order.Answer;
import rimeward.core.order.Standing;
import rimeward.port.Orders;

/**
 * The grower as the control loop knows him.
 *
 * @param orders what he asks for
 * @param answers hears what became of each order, on the loop's thread; must not block
 * @param standing what he ordered before the loop began
 */
public record Grower(Orders orders, Consumer<Answer> answers, Standing standing) {
    /** Who asks for nothing. */
    public static Grower silent() {
        return new Grower(Orders.none(), answer -> {}, Standing.NONE);
    }
}
