package rimeward.strip;

/**
 * One machine: a bar as high as its power while it runs, a thin line while it is only asked to.
 *
 * @param name of the machine
 * @param kind ink: the style sheet knows it
 * @param ratedW power that fills the lane, W
 * @param powerW electric power, W; holds until the next row
 * @param asked 1 where its relay is closed, else 0; holds until the next row
 */
public record LaneRow(String name, String kind, double ratedW, Series powerW, Series asked, String says)
        implements Row {
    private static final int HEIGHT_PX = 34;
    private static final int BAR_TOP_PX = 15;
    private static final int BAR_PX = 16;
    private static final int LEVELS = 16;
    private static final int LEVEL_UNITS = BAR_PX * Scale.UNITS_PER_PX / LEVELS;

    @Override
    public int heightPx() {
        return HEIGHT_PX;
    }

    @Override
    public void paper(Span span, Markup to) {
        int[] level = new int[Span.COLUMNS];
        double[] meanW = ColumnMeans.of(span, powerW);
        for (int i = 0; i < level.length; i++) {
            level[i] = level(meanW[i]);
        }
        to.open("svg", "y", Integer.toString(BAR_TOP_PX), "height", Integer.toString(BAR_PX));
        Shapes.stretched(to, BAR_PX * Scale.UNITS_PER_PX, "data-low", "0", "data-high", Shapes.px(ratedW));
        to.leaf("path", "class", "asked", "d", askedPath(ColumnMeans.of(span, asked), level));
        to.leaf(
                "path",
                "class",
                "bar " + kind,
                "data-name",
                name,
                "data-unit",
                "W",
                "data-decimals",
                "0",
                "d",
                barPath(level));
        to.close().close();
        Shapes.level(to, "base", BAR_TOP_PX + BAR_PX);
        Shapes.label(to, "lane", "6", BAR_TOP_PX - 3, name);
    }

    /** Anything that is more than a whisper shows. */
    private int level(double meanW) {
        int level = (int) Math.rint(Math.min(1, meanW / ratedW) * LEVELS);
        return level == 0 && meanW > ratedW / 100 ? 1 : level;
    }

    private static String barPath(int[] level) {
        int bottom = LEVELS * LEVEL_UNITS;
        PathText path = new PathText();
        path.moveTo(0, bottom);
        int was = 0;
        for (int column = 0; column < level.length; column++) {
            if (level[column] != was) {
                path.lineTo(column, bottom - was * LEVEL_UNITS);
                path.lineTo(column, bottom - level[column] * LEVEL_UNITS);
                was = level[column];
            }
        }
        path.lineTo(level.length, bottom - was * LEVEL_UNITS);
        path.lineTo(level.length, bottom);
        return path.toString();
    }

    private static String askedPath(double[] askedShare, int[] level) {
        int middle = LEVELS * LEVEL_UNITS / 2;
        PathText path = new PathText();
        boolean drawing = false;
        for (int column = 0; column <= askedShare.length; column++) {
            boolean only = column < askedShare.length && askedShare[column] >= 0.5 && level[column] == 0;
            if (only && !drawing) {
                path.moveTo(column, middle);
            } else if (!only && drawing) {
                path.lineTo(column, middle);
            }
            drawing = only;
        }
        return path.toString();
    }

    @Override
    public void gutter(Span span, Markup to) {
        Shapes.gutterLabel(to, "scale", BAR_TOP_PX + BAR_PX - 4.0, Math.round(ratedW) + " W");
    }
}
