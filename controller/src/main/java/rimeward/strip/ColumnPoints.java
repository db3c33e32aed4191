package rimeward.strip;

import java.util.Arrays;

/** Points of a line, at most four in a column: the first, the lowest, the highest and the last, in their own order. */
final class ColumnPoints {
    private int size;
    private int[] xs = new int[256];
    private int[] ys = new int[256];

    private boolean inColumn;
    private int column;
    private int count;
    private int first;
    private int last;
    private int least;
    private int leastAt;
    private int most;
    private int mostAt;

    void add(int x, int y) {
        if (inColumn && x != column) {
            endColumn();
        }
        if (!inColumn) {
            inColumn = true;
            column = x;
            count = 0;
            first = y;
            least = Integer.MAX_VALUE;
            most = Integer.MIN_VALUE;
        }
        if (y < least) {
            least = y;
            leastAt = count;
        }
        if (y > most) {
            most = y;
            mostAt = count;
        }
        last = y;
        count++;
    }

    /** Takes over what was gathered for the column that is still open. */
    void endColumn() {
        if (!inColumn) {
            return;
        }
        put(first);
        put(leastAt < mostAt ? least : most);
        put(leastAt < mostAt ? most : least);
        put(last);
        inColumn = false;
    }

    private void put(int y) {
        boolean again = size > 0 && xs[size - 1] == column && ys[size - 1] == y;
        if (again) {
            return;
        }
        if (size == xs.length) {
            xs = Arrays.copyOf(xs, 2 * size);
            ys = Arrays.copyOf(ys, 2 * size);
        }
        xs[size] = column;
        ys[size++] = y;
    }

    int size() {
        return size;
    }

    int x(int point) {
        return xs[point];
    }

    int y(int point) {
        return ys[point];
    }

    void clear() {
        size = 0;
        inColumn = false;
    }
}
