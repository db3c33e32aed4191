package rimeward.strip;

/**
 * One line of a panel.
 *
 * @param name as in the legend and the read-out
 * @param kind ink: the style sheet knows it
 * @param decimals worth reading out
 */
public record Pen(String name, String kind, Series series, String unit, int decimals) {}
