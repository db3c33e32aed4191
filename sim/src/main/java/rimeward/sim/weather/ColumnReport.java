package rimeward.sim.weather;

import java.util.List;

/**
 * What became of one column.
 *
 * @param column quantity, the file's name for it and its unit
 * @param used values that were used
 * @param missing cells that held nothing or a missing mark
 * @param rejected values that cannot be true
 * @param firstRejections the first few of these, with line, value and reason
 * @param bridged usual steps of time that had no usable value of their own and were filled by a straight line
 * @param longestGapS longest time between two usable values that was bridged, seconds
 */
public record ColumnReport(
        String column,
        int used,
        int missing,
        int rejected,
        List<String> firstRejections,
        int bridged,
        long longestGapS) {}
