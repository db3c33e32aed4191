package rimeward.sim.weather;

import java.util.Locale;

/**
 * Whether a record tells enough: the columns that weather needs, mostly true values, no gap beyond the limit in the time
 * asked for.
 */
record Completeness(ColumnMap map, Span span, Faults faults) {
    private static final int LONGEST_DAY_S = 25 * 3600; // of a zone that sets its clocks back
    private static final int REJECTED_ANYHOW = 3; // of a short file that says nothing about its unit
    private static final int REJECTED_ONE_IN = 20;

    void requireEnough() {
        requireOneOf(Quantity.AIR, Quantity.LOWEST_AIR);
        if (map.daily()) {
            requireOneOf(Quantity.LOWEST_AIR);
            requireOneOf(Quantity.HIGHEST_AIR);
        } else {
            requireOneOf(Quantity.DEW_POINT, Quantity.HUMIDITY);
        }
        requireOneOf(Quantity.WIND);
        requireOneOf(Quantity.CLOUD);
    }

    private void requireOneOf(Quantity... quantities) {
        for (Quantity quantity : quantities) {
            if (map.has(quantity) || map.assumed.containsKey(quantity)) {
                return;
            }
        }
        String remedy = quantities[0].canBeAssumed() ? "name its column, or assume a value" : "name its column";
        String alternative = quantities.length > 1 ? " (or " + quantities[1].key() + ")" : "";
        faults.add("tells no " + quantities[0].key() + alternative + "; " + remedy);
    }

    /** Too many rejections, too long gaps. */
    void judge(ColumnReader column) {
        var readings = column.readings();
        int read = readings.size() + column.rejected();
        String name = "column " + column.column.name();
        if (column.rejected() > Math.max(REJECTED_ANYHOW, read / REJECTED_ONE_IN)) {
            faults.add(name + ": " + column.rejected() + " of " + read + " values cannot be true, first "
                    + column.firstRejection() + "; the limit is one in " + REJECTED_ONE_IN + "; is the unit right?");
        } else if (readings.size() < 2) {
            faults.add(
                    name + ": fewer than two usable values in the time asked for; check the row filter and the time");
        }
        int statedS = map.longestGapS * column.column.quantity().patience();
        int limitS = map.daily() ? Math.max(statedS, LONGEST_DAY_S) : statedS;
        for (int i = 1; i < readings.size(); i++) {
            requireNear(name, readings.get(i - 1), readings.get(i), limitS);
        }
    }

    private void requireNear(String name, ColumnReader.Reading before, ColumnReader.Reading after, int limitS) {
        long gapS = after.epochS() - before.epochS();
        boolean matters = after.epochS() > span.fromEpochS() && before.epochS() < span.untilEpochS();
        if (gapS > limitS && matters) {
            faults.add(String.format(
                    Locale.ROOT,
                    "lines %d to %d, %s: no usable value for %.1f h from %s; the limit is %.1f h; fill the gap, allow a"
                            + " longer one, or ask for a time without it",
                    before.line(),
                    after.line(),
                    name,
                    gapS / 3600.0,
                    TimeColumns.utc(before.epochS()),
                    limitS / 3600.0));
        }
    }
}
