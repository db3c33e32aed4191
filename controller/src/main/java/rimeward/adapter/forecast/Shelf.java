package rimeward.adapter.forecast;

import java.util.Optional;
import java.util.function.Supplier;
import rimeward.core.outlook.Forecast;
import rimeward.core.reading.WallTime;

/** The last forecast that came, whether it can still be used, and what is wrong otherwise. One thread puts, any thread looks. */
final class Shelf {
    /** A forecast issued a day ago has been overtaken several times, s. Own choice. */
    static final long STALE_S = 86_400;

    /** A clock elsewhere may be ahead of ours by this, s. Own choice, as for what is handed over. */
    private static final long AHEAD_S = 600;

    private static final String MEANWHILE = " Nights are told from the tunnel's own air meanwhile.";

    private sealed interface Held {
        record Nothing() implements Held {}

        record Some(Forecast forecast) implements Held {}
    }

    /** What keeps a newer one away. Passing trouble is not worth a person's time while the last forecast is good. */
    private sealed interface Hindrance {
        record None() implements Hindrance {}

        record Told(String why, boolean lasting) implements Hindrance {}
    }

    private final String name;
    private final Supplier<WallTime> wall;
    private volatile Held held = new Held.Nothing();
    private volatile Hindrance hindrance = new Hindrance.None();

    /** @param name of the source for people: a host, a file */
    Shelf(String name, Supplier<WallTime> wall) {
        this.name = name;
        this.wall = wall;
    }

    /** Whether the time of day is known; without it no forecast's age is. */
    boolean knowsTime() {
        return wall.get().trusted();
    }

    /** @throws Unreadable if it is from the future */
    void put(Forecast forecast) throws Unreadable {
        if (forecast.issuedEpochS() > epochS(wall.get()) + AHEAD_S) {
            throw new Unreadable("it was issued later than now: is this computer's clock right?");
        }
        held = new Held.Some(forecast);
        hindrance = new Hindrance.None();
    }

    /** The last one still is the newest. */
    void confirm() {
        hindrance = new Hindrance.None();
    }

    /**
     * None came.
     *
     * @param why a sentence or two, with what to do
     * @param lasting whether it will not pass by itself
     */
    void hinder(String why, boolean lasting) {
        hindrance = new Hindrance.Told(why, lasting);
    }

    Optional<Forecast> newest() {
        WallTime now = wall.get();
        return held instanceof Held.Some some && now.trusted() && isFresh(some.forecast(), epochS(now))
                ? Optional.of(some.forecast())
                : Optional.empty();
    }

    Optional<String> trouble() {
        WallTime now = wall.get();
        Hindrance why = hindrance;
        if (!now.trusted()) {
            return Optional.of(
                    "This computer's clock is not set, so a forecast's hours mean nothing to it. It sets itself"
                            + " once the network is there; `timedatectl` tells." + MEANWHILE);
        }
        if (held instanceof Held.Some some) {
            return ofForecast(some.forecast(), epochS(now), why);
        }
        return why instanceof Hindrance.Told told
                ? Optional.of("There is no forecast from " + name + ". " + told.why() + MEANWHILE)
                : Optional.empty();
    }

    private Optional<String> ofForecast(Forecast forecast, long nowS, Hindrance why) {
        String because = why instanceof Hindrance.Told told ? told.why() : "It has no newer one.";
        if (isPast(forecast, nowS)) {
            return Optional.of("The forecast of " + name + " ended " + Ages.inWords(nowS - lastS(forecast)) + " ago. "
                    + because + MEANWHILE);
        }
        String old = "The forecast of " + name + " is " + Ages.inWords(nowS - forecast.issuedEpochS()) + " old";
        if (!isFresh(forecast, nowS)) {
            return Optional.of(old + ", too old to be used. " + because + MEANWHILE);
        }
        return why instanceof Hindrance.Told told && told.lasting()
                ? Optional.of(old + " and no newer one comes. " + told.why() + " It is used until it is 24 hours old.")
                : Optional.empty();
    }

    private static boolean isFresh(Forecast forecast, long nowS) {
        return !isPast(forecast, nowS) && nowS - forecast.issuedEpochS() <= STALE_S;
    }

    private static boolean isPast(Forecast forecast, long nowS) {
        return lastS(forecast) < nowS;
    }

    private static long lastS(Forecast forecast) {
        return forecast.points().get(forecast.points().size() - 1).epochS();
    }

    private static long epochS(WallTime now) {
        return now.epochS();
    }
}
