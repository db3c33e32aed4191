package rimeward.strip;

/** One row of a strip: what stands on its paper, and what stands in the gutter to its left. */
public interface Row {
    int heightPx();

    /** What it shows, in a sentence, for those who do not see it; empty for an ornament. */
    String says();

    /** Draws on the paper: across in percent, down in px. */
    void paper(Span span, Markup to);

    /** Draws in the gutter, from its right edge; down in px. */
    void gutter(Span span, Markup to);

    /** Whether the ground (nights, rules) is drawn behind it. */
    default boolean isRuled() {
        return true;
    }
}
