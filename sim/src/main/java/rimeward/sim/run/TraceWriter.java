package rimeward.sim.run;

import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.Outcome;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Trust;
import rimeward.sim.check.Facts;
import rimeward.sim.check.Invariants;
import rimeward.sim.weather.WeatherCursor;
import rimeward.sim.world.Truth;
import rimeward.site.RelaySet;

/**
 * Writes the trace: a row at every step of it and at every change of a relay. A row holds what was true as its tick began, what was
 * commanded then, and what the machines had made of that by the tick's end.
 */
final class TraceWriter {
    private final TraceBuilder builder;
    private final Truth truth;
    private final WeatherCursor weather;
    private final Invariants checks;
    private final int everyS;
    private long dueEpochS;
    private boolean begun;
    private Holder holder = Holder.NOT_NEEDED;
    private Trust trust = Trust.FULL;

    TraceWriter(Truth truth, WeatherCursor weather, Invariants checks, long startEpochS, int everyS) {
        this.truth = truth;
        this.weather = weather;
        this.checks = checks;
        this.everyS = everyS;
        dueEpochS = startEpochS;
        builder = new TraceBuilder(truth.machines());
    }

    /** After a command. */
    void begin(Facts now, Outcome outcome, boolean switched) {
        if (switched || isDue(now)) {
            holder = outcome.guarded().holder();
            trust = outcome.judgement().trust();
            if (outcome.judgement().inside() instanceof Inside.Seen seen) {
                builder.judged(seen.coldestC());
            }
            write(now, outcome.guarded().closed());
        }
    }

    /** Without a controller. */
    void beginDark(Facts now) {
        if (isDue(now)) {
            write(now, now.closed);
        }
    }

    private boolean isDue(Facts now) {
        while (dueEpochS < now.epochS) {
            dueEpochS += everyS;
        }
        return dueEpochS == now.epochS;
    }

    /** As the tick ends. */
    void end(Facts now) {
        if (begun) {
            for (int i = 0; i < truth.machines(); i++) {
                builder.power(i, truth.powerW(i));
            }
            builder.truth(now.powered, checks.isNeeded(now), checks.isGap(now), truth.isDoorOpen());
            builder.endRow();
            begun = false;
        }
    }

    private void write(Facts now, RelaySet closed) {
        weather.moveTo(now.epochS);
        builder.time(now.epochS)
                .put(Quantity.OUTSIDE_C, weather.outsideAirC())
                .put(
                        Quantity.OUTSIDE_RH_PERCENT,
                        RelativeHumidity.overWaterPercent(weather.outsideAirC(), weather.vapourPa()))
                .put(Quantity.OUTSIDE_HUMIDITY_G_PER_KG, weather.humidityKgPerKg() * 1000)
                .put(Quantity.WIND_M_PER_S, weather.windMPerS())
                .put(Quantity.SUN_W_PER_M2, weather.globalRadiationWPerM2())
                .put(Quantity.COLDEST_BENCH_C, now.coldestC)
                .put(Quantity.AIR_C, truth.airC())
                .put(Quantity.MASS_C, truth.massC())
                .put(Quantity.FILM_C, truth.filmC())
                .put(Quantity.DEW_POINT_C, MoistAir.dewPointC(truth.vapourPa()))
                .put(Quantity.RH_PERCENT, RelativeHumidity.overWaterPercent(truth.airC(), truth.vapourPa()))
                .put(Quantity.HUMIDITY_G_PER_KG, truth.humidityKgPerKg() * 1000)
                .put(Quantity.TANK_L, truth.tankKg())
                .control(closed, holder, trust);
        begun = true;
    }

    Trace build() {
        return builder.build();
    }
}
