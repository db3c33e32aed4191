package rimeward.page;

import rimeward.json.JsonText;
import rimeward.record.FrameRow;

/** The last 24 hours of the record. */
public final class DayJson {
    public static final int LENGTH_S = 86_400;

    private static final int STEP_S = 300;

    private final Columns columns;
    private final Intervals whiles;

    /** @param sight now */
    public DayJson(Sight sight) {
        long endS = Math.floorDiv(sight.epochS(), STEP_S) * STEP_S + STEP_S;
        columns = new Columns(
                sight.site(),
                endS - LENGTH_S,
                STEP_S,
                LENGTH_S / STEP_S,
                sight.outcome().floorC());
        whiles = new Intervals(columns::add);
    }

    /** Takes a kept frame; in the order they were taken. */
    public void add(FrameRow row) {
        columns.add(row);
        whiles.add(row);
    }

    /** What they come to. */
    public String json() {
        return JsonText.of(columns.map());
    }
}
