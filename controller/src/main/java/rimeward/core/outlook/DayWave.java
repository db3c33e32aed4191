package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.Daylight.RisesAndSets;

/**
 * Days that are all alike: coldest at sunrise, warmest in the early afternoon, by half a cosine from one to the other. (Common practice, no
 * source; the warmest hour from Parton &amp; Logan, Agricultural Meteorology 23, 1981.)
 */
final class DayWave {
    private static final long WARMEST_AFTER_NOON_S = 6696; // 1.86 h
    private static final long COLDEST_BEFORE_NOON_S = 21_600; // where the sun does not rise or set
    private static final long DAY_S = 86_400;
    private static final int DAYS = 2; // before and after

    private final List<Turn> turns;

    private record Turn(long epochS, double airC) {}

    private DayWave(List<Turn> turns) {
        this.turns = turns;
    }

    /** About a time, a day and more before and after it. */
    static DayWave about(long epochS, SunTimes sun, double lowestC, double highestC) {
        List<Turn> turns = new ArrayList<>();
        for (int day = -DAYS; day <= DAYS; day++) {
            Daylight light = sun.around(epochS + day * DAY_S);
            long coldestS = light instanceof RisesAndSets rises
                    ? rises.sunriseEpochS()
                    : light.noonEpochS() - COLDEST_BEFORE_NOON_S;
            turns.add(new Turn(coldestS, lowestC));
            turns.add(new Turn(light.noonEpochS() + WARMEST_AFTER_NOON_S, highestC));
        }
        return new DayWave(turns);
    }

    /** The same with another temperature at one sunrise. */
    DayWave coldestAt(long sunriseEpochS, double lowestC) {
        return new DayWave(turns.stream()
                .map(turn -> turn.epochS == sunriseEpochS ? new Turn(sunriseEpochS, lowestC) : turn)
                .toList());
    }

    double airC(long epochS) {
        int after = 1;
        while (after < turns.size() - 1 && turns.get(after).epochS <= epochS) {
            after++;
        }
        Turn from = turns.get(after - 1);
        Turn to = turns.get(after);
        double part = (double) (epochS - from.epochS) / (to.epochS - from.epochS);
        return from.airC + (to.airC - from.airC) * (1 - StrictMath.cos(StrictMath.PI * part)) / 2;
    }
}
