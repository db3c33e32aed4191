package rimeward.core.outlook;

import java.time.ZoneId;
import java.util.Locale;
import rimeward.site.Degrees;

/** Something that would help tonight, with its number. */
public sealed interface Help {
    String inWords(Degrees degrees, ZoneId zone);

    /** A machine that stands down or failed, back in use; the chance that the floor cannot be held is then this. */
    record MachineBack(String machine, double chanceThen) implements Help {
        @Override
        public String inWords(Degrees degrees, ZoneId zone) {
            return "bring " + machine + " back into use: the chance of cold is then " + ChanceWords.percent(chanceThen);
        }
    }

    /** So much more heat at the coldest hour, W, would bring the chance down to the stated one. */
    record MoreHeat(double heatW, double statedChance) implements Help {
        @Override
        public String inWords(Degrees degrees, ZoneId zone) {
            return String.format(
                    Locale.ROOT,
                    "%.0f W more heat, on a circuit that carries it, brings the chance of cold down to %s",
                    StrictMath.ceil(heatW / 10) * 10,
                    ChanceWords.percent(statedChance));
        }
    }

    /** Insulation that keeps so much, W/K; a share of what the tunnel loses. */
    record LessLoss(double lossWPerK, double share) implements Help {
        @Override
        public String inWords(Degrees degrees, ZoneId zone) {
            return String.format(
                    Locale.ROOT,
                    "or insulation that keeps back %.0f W/K, %.0f %% of the heat loss",
                    StrictMath.ceil(lossWPerK),
                    StrictMath.ceil(100 * share));
        }
    }

    /** A cover straight over the plants that keeps them so much warmer than the air, K. */
    record Cover(double warmerK) implements Help {
        @Override
        public String inWords(Degrees degrees, ZoneId zone) {
            return "or a cover over the plants that keeps them " + degrees.span(StrictMath.ceil(warmerK * 10) / 10)
                    + " warmer than the air around";
        }
    }

    /** Closing up: exchanged air takes so much heat at the coldest hour, W. */
    record Close(double exchangedW) implements Help {
        @Override
        public String inWords(Degrees degrees, ZoneId zone) {
            return String.format(
                    Locale.ROOT,
                    "shut door and vents tight and close every gap: draughts take about %.0f W at the coldest hour",
                    StrictMath.rint(exchangedW / 10) * 10);
        }
    }

    /** Emptying the tank before it is full. */
    record EmptyTank(long beforeEpochS) implements Help {
        @Override
        public String inWords(Degrees degrees, ZoneId zone) {
            return "empty the dryer's tank before dark; as it is, it is full at about "
                    + new LocalTimes(zone).clock(beforeEpochS) + " and the dryer stops";
        }
    }
}
