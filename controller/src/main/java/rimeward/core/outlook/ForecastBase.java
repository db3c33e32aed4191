package rimeward.core.outlook;

import java.util.Optional;
import java.util.OptionalDouble;

/** A forecast, corrected by what it missed here before. */
record ForecastBase(Forecast forecast, ForecastLine line, ForecastErrors errors, SunTimes sun) implements Base {
    /** What the sensor shows now tells little of the next morning. Own choice. */
    private static final Fading ERROR = new Fading(21_600);

    /** Empty where the forecast does not speak of all the time from now to the next noon: it would hide the night. */
    static Optional<Base> of(long nowEpochS, Forecast forecast, ForecastErrors errors, SunTimes sun) {
        ForecastLine line = new ForecastLine(forecast);
        return line.covers(nowEpochS, neededUntilEpochS(nowEpochS, sun))
                ? Optional.of(new ForecastBase(forecast, line, errors, sun))
                : Optional.empty();
    }

    /** Sunrise, if the night is not over; else noon. */
    private static long neededUntilEpochS(long nowEpochS, SunTimes sun) {
        return sun.night(nowEpochS)
                .map(NightSpan::sunriseEpochS)
                .filter(sunrise -> sunrise > nowEpochS)
                .orElse(sun.noonAfter(nowEpochS));
    }

    @Override
    public Course.Basis basis() {
        return new Course.Basis.Forecasted(forecast.source(), forecast.issuedEpochS(), errors.nights());
    }

    @Override
    public double airC(long epochS) {
        return line.airC(epochS).orElseThrow() + expected(epochS).biasK();
    }

    @Override
    public double spreadK(long epochS) {
        return expected(epochS).spreadK();
    }

    @Override
    public double spreadK(long epochS, long seenEpochS) {
        return ERROR.leftK(spreadK(epochS), epochS, seenEpochS);
    }

    @Override
    public double keep(long epochS, long seenEpochS) {
        return ERROR.keep(epochS, seenEpochS);
    }

    @Override
    public double lowestOffK() {
        return errors.lowest().biasK();
    }

    @Override
    public OptionalDouble dewPointC(long epochS) {
        return line.dewPointC(epochS);
    }

    @Override
    public long endsEpochS() {
        return line.endsEpochS();
    }

    private ForecastErrors.Expected expected(long epochS) {
        return errors.at(epochS - forecast.issuedEpochS(), sun.darkness(epochS));
    }
}
