package rimeward.sim.bound;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The linear programme about a path: the least electricity or money that keeps what is to be kept, as far as the tunnel's answers are
 * straight lines. States are taken out by the answers' own recursion, so that machines' running is all that is asked for.
 *
 * <p>What cannot be kept is paid for so dearly that it is broken only where nothing else is possible (an exact penalty: Fletcher,
 * Practical Methods of Optimization, 1987, ch. 14).
 */
final class Programme {
    /** Heater powers in the programme are in kW. */
    private static final double W_PER_KW = 1000;

    /** Dearer than any heat: kWh for a kelvin below in one quarter, and for a percent-hour too damp. Own choice. */
    private static final double PER_K = 100;

    private static final double PER_PERCENT_H = 2;

    /** Answers below this are left out, K and %, for the whole of an input. */
    private static final double NOTHING = 2e-4;

    /** Where electricity is free, freezing is not. */
    private static final double LEAST_PRICE = 0.01;

    private static final double WET_PERCENT = 100;

    private final double[] perKWh;
    private final Kept kept;
    private final Path path;
    private final Box box;
    private final int quarters;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final Variable[][] inputs;

    /** @param perKWh what a kilowatt-hour counts in each quarter: its price, or 1 for the least electricity */
    Programme(double[] perKWh, Kept kept, Path path, Box box) {
        this.perKWh = perKWh;
        this.kept = kept;
        this.path = path;
        this.box = box;
        quarters = path.quarters().length;
        inputs = new Variable[Tangent.INPUTS][quarters];
    }

    /** What the inputs should be. */
    Schedule solve() {
        for (int k = 0; k < quarters; k++) {
            layInputs(k);
        }
        Answers answers = new Answers(path, box, NOTHING);
        layFloor(answers);
        layDamp(answers);
        Optimisation.Result result = model.minimise();
        if (!result.getState().isOptimal()) {
            throw new IllegalStateException("the linear programme of " + quarters + " quarters of an hour ended as "
                    + result.getState() + ", though a penalty makes it solvable; this is a fault of Rimeward");
        }
        Schedule found = Schedule.idle(quarters);
        for (int k = 0; k < quarters; k++) {
            found.heaterW()[k] = W_PER_KW * value(0, k);
            found.dryerShare()[k] = Math.min(1, value(1, k));
            found.fanShare()[k] = Math.min(1 - found.dryerShare()[k], value(2, k));
        }
        return found;
    }

    private double value(int input, int k) {
        return Math.max(0, inputs[input][k].getValue().doubleValue());
    }

    private void layInputs(int k) {
        double[] kWh = path.tangents()[k].otherKWh();
        for (int i = 0; i < Tangent.INPUTS; i++) {
            double unit = i == 0 ? W_PER_KW : 1;
            double kWhPerUnit = i == 0 ? Course.QUARTER_H : kWh[i];
            inputs[i][k] = model.addVariable("i" + i + "q" + k)
                    .lower(box.least(i, k) / unit)
                    .upper(box.most(i, k) / unit)
                    .weight(perKWh[k] * kWhPerUnit);
        }
        if (box.most(1, k) > 0 && box.most(2, k) > 0) {
            model.addExpression("one" + k)
                    .set(inputs[1][k], 1)
                    .set(inputs[2][k], 1)
                    .upper(1);
        }
        if (box.most(0, k) + box.dryerW() * box.most(1, k) > box.circuitW()) {
            model.addExpression("circuit" + k)
                    .set(inputs[0][k], W_PER_KW)
                    .set(inputs[1][k], box.dryerW())
                    .upper(box.circuitW());
        }
    }

    private void layFloor(Answers answers) {
        for (int k = 0; k < quarters; k++) {
            Quarter now = path.quarters()[k];
            layAbove(answers.row(Tangent.END, k), now.endC(), kept.needEndC(k), k);
            layAbove(answers.row(Tangent.EARLY, k), now.earlyC(), kept.needC(k), k);
            layAbove(answers.row(Tangent.MIDDLE, k), now.middleC(), kept.needC(k), k);
        }
    }

    private void layAbove(Answers.Row row, double nowC, double needC, int k) {
        if (nowC + row.leastChange() >= needC) {
            return; // whatever the machines do
        }
        Variable shortK = model.addVariable().lower(0).weight(dear(PER_K, k));
        Expression line = model.addExpression().set(shortK, 1);
        layChange(line, row);
        line.lower(needC - nowC + row.about());
    }

    private void layDamp(Answers answers) {
        List<Variable> excesses = new ArrayList<>();
        for (int k = 0; k < quarters; k++) {
            Answers.Row row = answers.row(Tangent.DAMP, k);
            double abovePercent = path.quarters()[k].rhPercent() - kept.targetPercent();
            if (abovePercent + row.mostChange() <= 0) {
                continue;
            }
            Variable excess = model.addVariable().lower(0).upper(mostPercent(k) - kept.targetPercent());
            Variable wet = model.addVariable().lower(0).weight(dear(PER_PERCENT_H, k));
            Expression line = model.addExpression().set(excess, 1).set(wet, 1);
            excesses.add(excess);
            excesses.add(wet);
            Answers.Row drier = row.negative();
            layChange(line, drier);
            line.lower(abovePercent + drier.about());
        }
        Variable over = model.addVariable().lower(0).weight(dear(PER_PERCENT_H, 0));
        Expression total = model.addExpression("damp").set(over, -1);
        excesses.forEach(excess -> total.set(excess, Course.QUARTER_H));
        total.upper(kept.dampPercentH());
    }

    /** No bench at the dew point, unless the law's was. */
    private double mostPercent(int k) {
        return Math.max(WET_PERCENT, kept.rhPercent()[k]);
    }

    private double dear(double kWh, int k) {
        return kWh * Math.max(perKWh[k], LEAST_PRICE);
    }

    private void layChange(Expression line, Answers.Row row) {
        for (int i = 0; i < Tangent.INPUTS; i++) {
            double unit = i == 0 ? W_PER_KW : 1;
            double[] each = row.perInput()[i];
            for (int j = 0; j < each.length; j++) {
                if (each[j] != 0) {
                    line.set(inputs[i][row.first() + j], exact(each[j] * unit));
                }
            }
        }
    }

    /** The library counts in decimals, and takes long to make them out of binary digits that mean nothing. */
    private static BigDecimal exact(double answer) {
        return BigDecimal.valueOf(Math.round(answer * 1e9), 9);
    }
}
