package rimeward.json;

/** Numbers as payloads: digits, {@code -} and one point, the same on every machine. */
public final class Decimal {
    private static final long[] SCALE = {1, 10, 100, 1000};

    private Decimal() {}

    /**
     * @param value finite, and less than 10^15
     * @param decimals 0 to 3
     */
    public static String of(double value, int decimals) {
        long scale = SCALE[decimals];
        long scaled = Math.round(value * scale); // a rounded zero has no sign
        long size = Math.abs(scaled);
        String whole = (scaled < 0 ? "-" : "") + size / scale;
        return decimals == 0 ? whole : whole + "." + padded(size % scale, decimals);
    }

    private static String padded(long part, int decimals) {
        String digits = Long.toString(part);
        return "0".repeat(decimals - digits.length()) + digits;
    }
}
