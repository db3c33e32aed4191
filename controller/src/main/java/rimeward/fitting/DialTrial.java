package rimeward.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rimeward.core.reading.Reading;

/**
 * One mark of a dial under watch. The heater's relay stays closed, so that its own thermostat alone switches it; this looks at when it
 * does, and knows when enough was seen. Fed by times and readings, touches nothing.
 */
final class DialTrial {
    /** So long without a switching or a move of {@link #MOVE_K} means that none will come. Common practice, no source. */
    static final double PATIENCE_S = 3600;

    private static final double MOVE_K = 0.5;

    /** The relay's own closing is not the thermostat's, and a meter may show it late. Common practice, no source. */
    static final double SETTLE_S = 30;

    /** As long as the bench's reading may be missing. */
    static final double BLIND_S = 120;

    /** A heater that does come on shows it within its dead time, minutes. Common practice, no source. */
    static final double ALONE_S = 300;

    /** What to do next. */
    sealed interface Next {
        record GoOn() implements Next {}

        record End(String why) implements Next {}
    }

    private static final Next GO_ON = new Next.GoOn();

    private final String name;
    private final int wanted;
    private final TurnFinder finder;
    private final double deadTimeS;
    private final List<Double> onC = new ArrayList<>();
    private final List<Double> offC = new ArrayList<>();
    private final double startS;
    private double newsS;
    private double movedC = Double.POSITIVE_INFINITY;
    private double seenS;
    private double helpedS = Double.NEGATIVE_INFINITY;
    private double coldSinceS;
    private boolean cold;
    private int colds;

    /**
     * @param wanted whole swings to see
     * @param deadTimeS from the end of other heat until the bench no longer feels it
     */
    DialTrial(String name, int wanted, TurnFinder finder, double deadTimeS, double startS) {
        this.name = name;
        this.wanted = wanted;
        this.finder = finder;
        this.deadTimeS = deadTimeS;
        this.startS = startS;
        newsS = startS;
        seenS = startS;
    }

    /**
     * One more look.
     *
     * @param bench the watched bench's temperature, °C
     * @param powerW what the heater draws, W
     * @param limits what the limits ask for now
     */
    Next look(double atS, Reading bench, Reading powerW, Limits.Asked limits) {
        if (limits.tooHot()) {
            return new Next.End("the hot limit was reached: the heater was opened");
        }
        if (!(bench instanceof Reading.Value value)) {
            return atS - seenS > BLIND_S ? new Next.End("the bench's sensor gives no reading") : GO_ON;
        }
        seenS = atS;
        Optional<Turn> turn = atS - startS >= SETTLE_S ? finder.look(atS, value.value(), powerW) : Optional.empty();
        if (!(StrictMath.abs(value.value() - movedC) < MOVE_K)) {
            movedC = value.value();
            newsS = atS;
        }
        if (isTooLow(atS, limits)) {
            return new Next.End(
                    "the bench came down to the floor's margin and this mark did not bring it up: it does not hold the floor");
        }
        turn.filter(seen -> seen.atS() > helpedS + deadTimeS).ifPresent(this::keep);
        if (swings() >= wanted) {
            return new Next.End("");
        }
        return atS - newsS > PATIENCE_S
                ? new Next.End("nothing switched for " + Math.round(PATIENCE_S / 60)
                        + " min and the bench stands still: the mark may"
                        + " lie above what this heater reaches, or below what this weather falls to")
                : GO_ON;
    }

    /**
     * Whether the floor's margin is reached in a way that says the mark does not hold it: a second time since the heater last came on,
     * or for long where no other stage can help. Heat from elsewhere moves the bench, so what is seen meanwhile is not the mark's.
     */
    private boolean isTooLow(double atS, Limits.Asked limits) {
        if (!limits.tooCold()) {
            cold = false;
            return false;
        }
        if (!cold) {
            cold = true;
            coldSinceS = atS;
            colds++;
        }
        boolean alone = limits.helping().isEmpty();
        helpedS = alone ? helpedS : atS;
        return alone ? limits.atFloor() || atS - coldSinceS > ALONE_S : colds > 1;
    }

    private void keep(Turn turn) {
        (turn.on() ? onC : offC).add(turn.benchC());
        newsS = turn.atS();
        colds = turn.on() ? 0 : colds;
    }

    int swings() {
        return StrictMath.min(onC.size(), offC.size());
    }

    /** What was seen until now. */
    Mark mark(String ending) {
        return new Mark(name, onC, offC, finder.inWords(), ending);
    }
}
