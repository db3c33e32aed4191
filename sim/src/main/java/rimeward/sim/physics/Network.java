package rimeward.sim.physics;

import java.util.Arrays;

/**
 * A few lumps joined by conductances, stepped through time; for one thread. {@link SixNodes} is the same for the tunnel alone, written
 * out for speed; this one is what is checked against published rooms and walls. A lump ("node") has a capacity, or none, and then its
 * value follows from the balance of its flows at once. Units are the caller's: with J/K, W/K, W and °C it is heat, with kg and kg/s it
 * is vapour, and {@link #flow} lets the two act on each other.
 *
 * <p>The scheme is the two-stage, third-order, A-stable diagonally implicit Runge–Kutta method of Crouzeix (in Hairer &amp; Wanner,
 * Solving Ordinary Differential Equations II, table IV.6.5: γ = (3 + √3)/6, both weights ½), so no step is too long to be stable. The
 * equal weights and the linear balance have a pleasant effect: the flows of a step, integrated, are exactly those at the {@link #mean}
 * of the two stages. Whoever books fluxes books them there, and the books close.
 *
 * <p>Nodes are eliminated in the order of their numbers, zeros skipped: number the loosely joined ones first.
 */
public final class Network {
    private static final double GAMMA = (3 + Math.sqrt(3)) / 6;
    private static final double SECOND_START = (1 - 2 * GAMMA) / GAMMA;

    private final int nodes;
    private final double[] capacity;
    private final double[] value;
    private final double[] loss;
    private final double[] supply;
    private final double[] pivot;
    private final double[] start;
    private final double[] first;
    private final double[] second;
    private final double[] mean;

    private double lastStepS;

    public Network(int nodes) {
        this.nodes = nodes;
        capacity = new double[nodes];
        value = new double[nodes];
        loss = new double[nodes * nodes];
        supply = new double[nodes];
        pivot = new double[nodes];
        start = new double[nodes];
        first = new double[nodes];
        second = new double[nodes];
        mean = new double[nodes];
    }

    /** What the node stores per unit of its value; 0 for none. */
    public void capacity(int node, double perUnit) {
        capacity[node] = perUnit;
    }

    public void value(int node, double now) {
        value[node] = now;
    }

    /** Value at the end of the last step; of a node without capacity, what was last set. */
    public double value(int node) {
        return value[node];
    }

    /** The value at which the flows of the last step, times its length, are what was moved. */
    public double mean(int node) {
        return mean[node];
    }

    /** Takes all links, flows and sources away; capacities and values stay. */
    public void clear() {
        Arrays.fill(loss, 0);
        Arrays.fill(supply, 0);
    }

    /** Lets {@code perUnit} × (value of {@code from}) flow into the node. */
    public void flow(int node, int from, double perUnit) {
        loss[node * nodes + from] -= perUnit;
    }

    /** Lets a known amount a second flow into the node. */
    public void source(int node, double perS) {
        supply[node] += perS;
    }

    /** Joins the node to something whose value is known. */
    public void bound(int node, double conductance, double to) {
        loss[node * nodes + node] += conductance;
        supply[node] += conductance * to;
    }

    /** Joins two nodes: what one gives the other gets. */
    public void link(int one, int other, double conductance) {
        loss[one * nodes + one] += conductance;
        loss[one * nodes + other] -= conductance;
        loss[other * nodes + other] += conductance;
        loss[other * nodes + one] -= conductance;
    }

    /** Steps all values; consumes the links, so {@link #clear} and lay them again before the next step. */
    public void step(double stepS) {
        lastStepS = stepS;
        double perS = 1 / (GAMMA * stepS);
        for (int i = 0; i < nodes; i++) {
            loss[i * nodes + i] += capacity[i] * perS;
            start[i] = value[i];
        }
        eliminate();
        solve(perS, first);
        for (int i = 0; i < nodes; i++) {
            start[i] += SECOND_START * (first[i] - value[i]);
        }
        solve(perS, second);
        for (int i = 0; i < nodes; i++) {
            mean[i] = (first[i] + second[i]) / 2;
            if (capacity[i] > 0) {
                value[i] += (first[i] - value[i] + second[i] - start[i]) / (2 * GAMMA);
            }
        }
    }

    /**
     * Where something ends the last step that follows a node with a time constant and does not act on it, such as a slow sensor; to the
     * same order as the nodes.
     */
    public double follower(int node, double now, double timeConstantS) {
        double x = GAMMA * lastStepS / timeConstantS;
        double damping = 1 / (1 + x);
        double one = (now + x * first[node]) * damping;
        double secondStart = now + SECOND_START * (one - now);
        double two = (secondStart + x * second[node]) * damping;
        return now + (one - now + two - secondStart) / (2 * GAMMA);
    }

    /** Splits the balance into triangles, in place. Safe without choosing pivots: a network's own losses outweigh its links. */
    private void eliminate() {
        double[] m = loss;
        int n = nodes;
        for (int k = 0; k < n; k++) {
            int rowK = k * n;
            double inverse = 1 / m[rowK + k];
            pivot[k] = inverse;
            for (int rowI = rowK + n; rowI < m.length; rowI += n) {
                double below = m[rowI + k];
                if (below != 0) {
                    double factor = below * inverse;
                    m[rowI + k] = factor;
                    for (int j = k + 1; j < n; j++) {
                        m[rowI + j] -= factor * m[rowK + j];
                    }
                }
            }
        }
    }

    private void solve(double perS, double[] result) {
        double[] m = loss;
        int n = nodes;
        for (int i = 0, row = 0; i < n; i++, row += n) {
            double sum = supply[i] + capacity[i] * perS * start[i];
            for (int j = 0; j < i; j++) {
                if (m[row + j] != 0) { // most nodes are not joined, and every term waits for the one before
                    sum -= m[row + j] * result[j];
                }
            }
            result[i] = sum;
        }
        for (int i = n - 1, row = m.length - n; i >= 0; i--, row -= n) {
            double sum = result[i];
            for (int j = n - 1; j > i; j--) {
                if (m[row + j] != 0) {
                    sum -= m[row + j] * result[j];
                }
            }
            result[i] = sum * pivot[i];
        }
    }
}
