package rimeward.strip;

import java.time.ZoneOffset;

/**
 * The stretch of time a strip shows.
 *
 * @param startS first second, since 1970 UTC
 * @param endS the second after the last
 * @param offset of the place's clock from UTC
 */
public record Span(long startS, long endS, ZoneOffset offset) {
    /** Horizontal resolution of everything drawn: finer than the pixels of a wide screen or a printed page. */
    public static final int COLUMNS = 2000;

    private static final int HUNDREDTHS_OF_PERCENT = 10_000;

    public Span {
        if (endS <= startS) {
            throw new IllegalArgumentException("a strip must end after it starts");
        }
    }

    public long lengthS() {
        return endS - startS;
    }

    /** Place of a time on the strip, 0 to {@link #COLUMNS}; what lies outside goes to the edge. */
    public int column(long epochS) {
        return Math.toIntExact(Math.floorDiv(clamped(epochS) * COLUMNS * 2 + lengthS(), 2 * lengthS()));
    }

    /** The same for SVG and CSS: "37.25%". */
    public String percent(long epochS) {
        return percentText(Math.floorDiv(clamped(epochS) * HUNDREDTHS_OF_PERCENT, lengthS()));
    }

    /** Width of a stretch: "4.10%". */
    public String percent(long fromS, long toS) {
        return percentText(Math.floorDiv(clamped(toS) * HUNDREDTHS_OF_PERCENT, lengthS())
                - Math.floorDiv(clamped(fromS) * HUNDREDTHS_OF_PERCENT, lengthS()));
    }

    /** First multiple of a step, counted from local midnight, at or after the start. */
    public long firstRuleS(long stepS) {
        long localS = startS + offset.getTotalSeconds();
        return -Math.floorDiv(-localS, stepS) * stepS - offset.getTotalSeconds();
    }

    public boolean contains(long epochS) {
        return epochS >= startS && epochS <= endS;
    }

    private long clamped(long epochS) {
        return Math.max(0, Math.min(lengthS(), epochS - startS));
    }

    private static String percentText(long hundredths) {
        long rest = hundredths % 100;
        return hundredths / 100 + (rest < 10 ? ".0" : ".") + rest + "%";
    }
}
