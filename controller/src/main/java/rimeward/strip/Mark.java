package rimeward.strip;

/**
 * Something that happened, with a line through the whole strip.
 *
 * @param code short, as in the list below the strip: "F1"
 * @param kind "fault" or "alert": the style sheet knows them
 * @param text a few words
 */
public record Mark(long epochS, String code, String kind, String text) {}
