package rimeward.core.outlook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The next day like the last ones. */
record GuessBase(DayWave wave, double spreadK) implements Base {
    /** So many days, the newest, tell what the next is like. Own choice. */
    private static final int LIKE_LAST = 3;

    /** How far a night is from the ones before, K, until own nights tell; that counts like so many nights. Own choices. */
    private static final double USUAL_SPREAD_K = 4;

    private static final double USUAL_COUNTS = 5;

    /** From the coldest to the warmest hour where no day was seen yet, K. Own choice. */
    private static final double USUAL_SWING_K = 6;

    /** A cold spell lasts days, but how far the air is off now is partly the day's shape, which is rough. Own choice. */
    private static final Fading ERROR = new Fading(43_200);

    /** Empty where neither a night nor the air now was seen. */
    static Optional<GuessBase> of(long nowEpochS, OutsideAir now, List<KnownNight> nights, SunTimes sun) {
        if (!nights.isEmpty()) {
            return Optional.of(byNights(nowEpochS, nights, sun));
        }
        return now instanceof OutsideAir.Seen seen ? Optional.of(byNow(nowEpochS, seen.airC(), sun)) : Optional.empty();
    }

    private static GuessBase byNights(long nowEpochS, List<KnownNight> nights, SunTimes sun) {
        double lowestC = lowestC(nights, nights.size());
        double highestC = last(nights, nights.size()).stream()
                .mapToDouble(KnownNight::highestC)
                .average()
                .orElseThrow();
        double squares = USUAL_COUNTS * USUAL_SPREAD_K * USUAL_SPREAD_K;
        for (int i = 1; i < nights.size(); i++) {
            double offK = nights.get(i).lowestC() - lowestC(nights, i);
            squares += offK * offK;
        }
        double spreadK = StrictMath.sqrt(squares / (USUAL_COUNTS + nights.size() - 1));
        return new GuessBase(DayWave.about(nowEpochS, sun, lowestC, highestC), spreadK);
    }

    /** What would have been guessed for the night of that index. */
    private static double lowestC(List<KnownNight> nights, int index) {
        return last(nights, index).stream()
                .mapToDouble(KnownNight::lowestC)
                .average()
                .orElseThrow();
    }

    private static List<KnownNight> last(List<KnownNight> nights, int end) {
        return nights.subList(Math.max(0, end - LIKE_LAST), end);
    }

    /** The usual swing, laid through what is seen now. */
    private static GuessBase byNow(long nowEpochS, double airC, SunTimes sun) {
        double nowInSwingK = DayWave.about(nowEpochS, sun, 0, USUAL_SWING_K).airC(nowEpochS);
        double lowestC = airC - nowInSwingK;
        return new GuessBase(DayWave.about(nowEpochS, sun, lowestC, lowestC + USUAL_SWING_K), USUAL_SPREAD_K);
    }

    @Override
    public Course.Basis basis() {
        return new Course.Basis.Guess();
    }

    @Override
    public double airC(long epochS) {
        return wave.airC(epochS);
    }

    @Override
    public double spreadK(long epochS) {
        return spreadK;
    }

    @Override
    public double spreadK(long epochS, long seenEpochS) {
        return ERROR.leftK(spreadK, epochS, seenEpochS);
    }

    @Override
    public double keep(long epochS, long seenEpochS) {
        return ERROR.keep(epochS, seenEpochS);
    }

    @Override
    public double lowestOffK() {
        return 0;
    }

    @Override
    public OptionalDouble dewPointC(long epochS) {
        return OptionalDouble.empty();
    }

    @Override
    public long endsEpochS() {
        return Long.MAX_VALUE;
    }
}
