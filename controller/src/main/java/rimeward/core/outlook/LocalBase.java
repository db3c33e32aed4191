package rimeward.core.outlook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Until sunrise as this evening's air and the nights before say; then a day like the last ones. */
record LocalBase(NightMinimum minimum, Cooling cooling, GuessBase then) implements Base {
    /** Empty by day, before the evening's air was seen, and until enough nights are known. */
    static Optional<Base> of(
            long nowEpochS, OutsideAir evening, List<KnownNight> nights, GuessBase guess, SunTimes sun) {
        Optional<NightSpan> night = sun.night(nowEpochS);
        if (night.isEmpty()
                || nowEpochS >= night.get().sunriseEpochS()
                || !(evening instanceof OutsideAir.Seen seen)
                || seen.epochS()
                        >= night.get().sunriseEpochS()) { // two hours after sunset may be day again in the north
            return Optional.empty();
        }
        long sunriseS = night.get().sunriseEpochS();
        return NightMinimum.after(seen, nights)
                .map(lowest -> new LocalBase(
                        lowest,
                        new Cooling(seen.epochS(), seen.airC(), sunriseS, lowest.airC()),
                        new GuessBase(guess.wave().coldestAt(sunriseS, lowest.airC()), guess.spreadK())));
    }

    @Override
    public Course.Basis basis() {
        return new Course.Basis.Local(minimum.nights());
    }

    @Override
    public double airC(long epochS) {
        return isTonight(epochS) ? cooling.airC(epochS) : then.airC(epochS);
    }

    @Override
    public double spreadK(long epochS) {
        return isTonight(epochS) ? minimum.spreadK() : StrictMath.max(minimum.spreadK(), then.spreadK());
    }

    /** Tonight the air strays from the curve like a random walk, of which the part until now is known. Own choice. */
    @Override
    public double spreadK(long epochS, long seenEpochS) {
        return isTonight(epochS)
                ? minimum.spreadK() * StrictMath.sqrt(cooling.share(epochS) - cooling.share(seenEpochS))
                : StrictMath.max(minimum.spreadK(), then.spreadK(epochS, cooling.sunriseEpochS()));
    }

    @Override
    public double keep(long epochS, long seenEpochS) {
        return isTonight(epochS) ? 1 : then.keep(epochS, cooling.sunriseEpochS());
    }

    private boolean isTonight(long epochS) {
        return epochS <= cooling.sunriseEpochS();
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
