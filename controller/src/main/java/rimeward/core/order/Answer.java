package rimeward.core.order;

/**
 * What became of an order.
 *
 * @param taken whether it was carried out; if not, nothing was changed
 * @param text what happened, or why not, in a sentence for the grower
 */
public record Answer(Order order, boolean taken, String text) {}
