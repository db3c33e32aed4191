package rimeward.fitting;

import java.util.Optional;
import rimeward.core.reading.Reading;

/** By the meter: the moment itself. Between the two shares nothing is concluded, for a fan may run on. */
final class TurnByPower implements TurnFinder {
    /** Of the rated power; common practice, no source. */
    private static final double ON_SHARE = 0.5;

    private static final double OFF_SHARE = 0.15;

    private enum Heating {
        UNKNOWN,
        YES,
        NO
    }

    private final double ratedW;
    private Heating heating = Heating.UNKNOWN;

    TurnByPower(double ratedW) {
        this.ratedW = ratedW;
    }

    @Override
    public Optional<Turn> look(double atS, double benchC, Reading powerW) {
        if (!(powerW instanceof Reading.Value power)) {
            heating = Heating.UNKNOWN; // it may have switched unseen
            return Optional.empty();
        }
        Heating now = heating;
        if (power.value() >= ON_SHARE * ratedW) {
            now = Heating.YES;
        } else if (power.value() <= OFF_SHARE * ratedW) {
            now = Heating.NO;
        }
        boolean turned = heating != Heating.UNKNOWN && now != heating;
        heating = now;
        return turned ? Optional.of(new Turn(now == Heating.YES, atS, benchC)) : Optional.empty();
    }

    @Override
    public String inWords() {
        return "by the meter";
    }
}
