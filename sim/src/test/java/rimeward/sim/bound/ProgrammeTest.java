package rimeward.sim.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Against optima that can be worked out by hand. */
class ProgrammeTest {
    private static final int QUARTERS = 24;

    private static double[] heaterW(double startC, double[] perKWh) {
        int quarters = perKWh.length;
        return new Programme(perKWh, OneNode.kept(quarters), OneNode.cooling(startC, quarters), OneNode.box(quarters))
                .solve()
                .heaterW();
    }

    private static double[] prices(double first, double then) {
        double[] perKWh = new double[8];
        Arrays.fill(perKWh, 0, 4, first);
        Arrays.fill(perKWh, 4, 8, then);
        return perKWh;
    }

    @Test
    void onTheFloorTheLeastIsTheLoss() {
        double[] flat = new double[QUARTERS];
        Arrays.fill(flat, 1);
        double lossW = OneNode.U_W_PER_K * OneNode.FLOOR_C;
        for (double heaterW : heaterW(OneNode.FLOOR_C, flat)) {
            assertThat(heaterW).isCloseTo(lossW, within(0.5));
        }
    }

    @Test
    void whatIsWarmerFirstCoolsToTheFloor() {
        double[] flat = new double[QUARTERS];
        Arrays.fill(flat, 1);
        double[] heaterW = heaterW(6, flat);
        int coolsFor = 13; // 6 °C · 0.9512¹³ = 3.13 °C, and ¹⁴ would be 2.98 °C
        for (int k = 0; k < coolsFor; k++) {
            assertThat(heaterW[k]).isCloseTo(0, within(0.5));
        }
        double missingK = OneNode.FLOOR_C - 6 * Math.pow(OneNode.KEEPS, coolsFor + 1.0);
        assertThat(heaterW[coolsFor]).isCloseTo(missingK / OneNode.K_PER_W, within(0.5));
        assertThat(heaterW[coolsFor + 1]).isCloseTo(300, within(0.5));
    }

    @Test
    void heatIsBoughtAheadWhereThePriceRisesByMoreThanWhatLeaksAway() {
        double[] heaterW = heaterW(OneNode.FLOOR_C, prices(0.10, 0.30));
        double lastsC = OneNode.FLOOR_C / Math.pow(OneNode.KEEPS, 4);
        double aheadW = (lastsC - OneNode.FLOOR_C * OneNode.KEEPS) / OneNode.K_PER_W;
        assertThat(heaterW[3]).isCloseTo(aheadW, within(1.0));
        for (int k = 4; k < 8; k++) {
            assertThat(heaterW[k]).isCloseTo(0, within(1.0));
        }
    }

    @Test
    void andNotWhereItRisesByLess() {
        double[] heaterW = heaterW(OneNode.FLOOR_C, prices(0.100, 0.104)); // a quarter keeps 0.951 of it
        for (double each : heaterW) {
            assertThat(each).isCloseTo(300, within(0.5));
        }
    }
}
