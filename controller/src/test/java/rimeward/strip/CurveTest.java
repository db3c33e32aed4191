package rimeward.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is drawn is what was measured, to a quarter of a pixel. */
final class CurveTest {
    private static final Scale SCALE = new Scale(-10, 20, 1, 5, 250);

    @Test
    void aStraightLineNeedsTwoPoints() {
        assertThat(points(path(1000, row -> row * 0.01))).hasSize(2);
    }

    @Test
    void everyReadingLiesOnTheLineOrBetweenItsNeighboursInTheColumn() {
        Random random = new Random(11);
        double[] walk = new double[700];
        for (int i = 1; i < walk.length; i++) {
            walk[i] = walk[i - 1] * 0.98 + random.nextInt(-100, 101) / 150.0;
        }
        List<int[]> drawn = points(path(walk.length, row -> walk[row]));
        assertThat(drawn.size()).isLessThan(walk.length);
        Span span = span(walk.length);
        for (int row = 0; row < walk.length; row++) {
            double units = heightAt(drawn, span.column(row * 60L));
            assertThat(units)
                    .as("row " + row)
                    .isCloseTo(SCALE.units(walk[row]), org.assertj.core.data.Offset.offset(1.01));
        }
    }

    @Test
    void aSpikeWithinAColumnStays() {
        List<int[]> drawn = points(path(40_000, row -> row == 23_456 ? 17 : 5));
        assertThat(drawn).anyMatch(point -> point[1] == SCALE.units(17));
    }

    @Test
    void nothingIsDrawnWhereNothingIsKnown() {
        Series broken = series(100, row -> 5, row -> row < 40 || row >= 60);
        String path = Curve.path(span(100), SCALE, broken, 1);
        assertThat(path.chars().filter(c -> c == 'M')).hasSize(2);
        assertThat(points(path)).noneMatch(point -> point[0] > 820 && point[0] < 1190);
    }

    private static String path(int rows, IntToDoubleFunction value) {
        return Curve.path(span(rows), SCALE, series(rows, value, row -> true), 1);
    }

    private static Span span(int rows) {
        return new Span(0, rows * 60L, ZoneOffset.UTC);
    }

    private static Series series(int rows, IntToDoubleFunction value, java.util.function.IntPredicate known) {
        return new Series() {
            @Override
            public int rows() {
                return rows;
            }

            @Override
            public long epochS(int row) {
                return row * 60L;
            }

            @Override
            public double value(int row) {
                return value.applyAsDouble(row);
            }

            @Override
            public boolean isKnown(int row) {
                return known.test(row);
            }
        };
    }

    private static double heightAt(List<int[]> drawn, int column) {
        for (int i = 1; i < drawn.size(); i++) {
            int[] a = drawn.get(i - 1);
            int[] b = drawn.get(i);
            if (column >= a[0] && column <= b[0]) {
                return a[0] == b[0] ? b[1] : a[1] + (double) (column - a[0]) * (b[1] - a[1]) / (b[0] - a[0]);
            }
        }
        throw new AssertionError("nothing drawn at " + column);
    }

    private static List<int[]> points(String path) {
        List<int[]> found = new ArrayList<>();
        Matcher tokens = Pattern.compile("[Ml]|-?\\d+").matcher(path);
        boolean relative = false;
        int[] at = {0, 0};
        int which = 0;
        while (tokens.find()) {
            String token = tokens.group();
            if (token.equals("M") || token.equals("l")) {
                relative = token.equals("l");
            } else {
                at[which] = Integer.parseInt(token) + (relative ? at[which] : 0);
                which = 1 - which;
                if (which == 0) {
                    found.add(at.clone());
                }
            }
        }
        return found;
    }
}
