package rimeward.strip;

/**
 * A time that is shaded on every row.
 *
 * @param kind "night", "outage", "door": the style sheet knows them
 */
public record Stretch(String kind, long fromS, long toS) {}
