package rimeward.sim.bound;

import java.util.Arrays;

/**
 * What each input of each quarter does to what is seen in each quarter after it, by the answers of the quarters between: the states of
 * the linearised tunnel, taken out.
 */
final class Answers {
    private final Path path;
    private final Box box;
    private final int quarters;
    private final double[][][][] perInput; // seen − EARLY, quarter, input, inputs' quarter from first on
    private final int[] first;

    Answers(Path path, Box box, double nothing) {
        this.path = path;
        this.box = box;
        quarters = path.quarters().length;
        int[][] reach = new int[Tangent.INPUTS][quarters];
        double[][][][] fromInput = new double[Tangent.INPUTS][quarters][][];
        first = new int[quarters];
        for (int k = 0; k < quarters; k++) {
            first[k] = k;
        }
        for (int i = 0; i < Tangent.INPUTS; i++) {
            for (int j = 0; j < quarters; j++) {
                fromInput[i][j] = follow(i, j, nothing);
                reach[i][j] = fromInput[i][j].length;
                for (int k = j; k < j + reach[i][j]; k++) {
                    first[k] = Math.min(first[k], j);
                }
            }
        }
        perInput = new double[Tangent.SEEN - Tangent.STATES][quarters][Tangent.INPUTS][];
        for (int s = 0; s < perInput.length; s++) {
            for (int k = 0; k < quarters; k++) {
                for (int i = 0; i < Tangent.INPUTS; i++) {
                    double[] each = new double[k - first[k] + 1];
                    for (int j = first[k]; j <= k; j++) {
                        each[j - first[k]] = k - j < reach[i][j] ? fromInput[i][j][k - j][s] : 0;
                    }
                    perInput[s][k][i] = each;
                }
            }
        }
    }

    /** What one more of an input in a quarter does to what is seen in that and the following ones, until that is nothing. */
    private double[][] follow(int input, int quarter, double nothing) {
        double whole = box.most(input, quarter) - box.least(input, quarter);
        if (whole <= 0) {
            return new double[0][];
        }
        double[][] seen = new double[quarters - quarter][];
        double[] now = path.tangents()[quarter].onInput()[input];
        int length = 0;
        for (int k = quarter; k < quarters; k++) {
            if (k > quarter) {
                now = pass(path.tangents()[k], now);
            }
            double[] here = Arrays.copyOfRange(now, Tangent.STATES, Tangent.SEEN);
            seen[length++] = here;
            if (whole * Math.max(Math.abs(now[Tangent.END]), Math.abs(now[Tangent.DAMP])) < nothing) {
                break;
            }
        }
        return Arrays.copyOf(seen, length);
    }

    private static double[] pass(Tangent tangent, double[] before) {
        double[] after = new double[Tangent.SEEN];
        for (int i = 0; i < Tangent.STATES; i++) {
            double[] column = tangent.onState()[i];
            for (int s = 0; s < Tangent.SEEN; s++) {
                after[s] += column[s] * before[i];
            }
        }
        return after;
    }

    /** What everything does to one number of one quarter. */
    Row row(int seen, int quarter) {
        return new Row(perInput[seen - Tangent.STATES][quarter], first[quarter], path.schedule(), box);
    }

    /** One number's answers. */
    static final class Row {
        private final double[][] perInput;
        private final int first;
        private final Schedule path;
        private final Box box;

        Row(double[][] perInput, int first, Schedule path, Box box) {
            this.perInput = perInput;
            this.first = first;
            this.path = path;
            this.box = box;
        }

        /** By input and by its quarter, from {@code first} on. */
        double[][] perInput() {
            return perInput;
        }

        int first() {
            return first;
        }

        /** What the answers make of the path's own inputs. */
        double about() {
            double sum = 0;
            for (int i = 0; i < Tangent.INPUTS; i++) {
                double[] inputs = path.input(i);
                for (int j = 0; j < perInput[i].length; j++) {
                    sum += perInput[i][j] * inputs[first + j];
                }
            }
            return sum;
        }

        /** The least that any inputs could bring, against the path's. */
        double leastChange() {
            double sum = -about();
            for (int i = 0; i < Tangent.INPUTS; i++) {
                for (int j = 0; j < perInput[i].length; j++) {
                    double each = perInput[i][j];
                    sum += each * (each > 0 ? box.least(i, first + j) : box.most(i, first + j));
                }
            }
            return sum;
        }

        double mostChange() {
            return -negative().leastChange();
        }

        Row negative() {
            double[][] other = new double[perInput.length][];
            for (int i = 0; i < other.length; i++) {
                other[i] = new double[perInput[i].length];
                for (int j = 0; j < other[i].length; j++) {
                    other[i][j] = -perInput[i][j];
                }
            }
            return new Row(other, first, path, box);
        }
    }
}
