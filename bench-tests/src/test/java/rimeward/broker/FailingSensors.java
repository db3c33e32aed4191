package rimeward.broker;

import java.util.Collections;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.port.Forecasts;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;
import rimeward.service.Surroundings;
import rimeward.site.Site;

/** A tunnel whose sensors all fail for a moment again and again, and whose time goes fast. */
final class FailingSensors implements Surroundings {
    static final long TICK_MS = 30_000;
    private static final long PACE_NS = 2_000_000;

    private final Site site;
    private final long startMs;
    private final long failsEvery;
    private volatile boolean over;
    private long ticks;

    /**
     * @param startMs time of day at the start, ms since 1970 UTC
     * @param failsEvery how many ticks apart the failures are; 0 for none
     */
    FailingSensors(Site site, long startMs, long failsEvery) {
        this.site = site;
        this.startMs = startMs;
        this.failsEvery = failsEvery;
    }

    /** No more ticks. */
    void end() {
        over = true;
    }

    private boolean fails() {
        return failsEvery > 0 && ticks % failsEvery == 0;
    }

    @Override
    public Sensors sensors() {
        Reading air = new Reading.Value(9, 0);
        SensorReading sound = new SensorReading(air, new Reading.Value(60, 0));
        SensorReading lost = new SensorReading(Reading.NO_ANSWER, Reading.NO_ANSWER);
        return () -> new Senses(
                Collections.nCopies(site.sensors().size(), fails() ? lost : sound),
                Collections.nCopies(site.machines().size(), Reading.NO_ANSWER),
                Signal.OFF,
                Signal.OFF);
    }

    @Override
    public Relays relays() {
        return set -> {};
    }

    @Override
    public Forecasts forecasts() {
        return Forecasts.none();
    }

    @Override
    public WallTime now() {
        return new WallTime(startMs + ticks * TICK_MS, true);
    }

    @Override
    public String boot() {
        return "one";
    }

    @Override
    public Ticker ticker(long fromElapsedMs) {
        return () -> {
            LockSupport.parkNanos(PACE_NS); // or else the line would never be quicker than the alerts
            ticks++;
            return over ? Optional.empty() : Optional.of(new Tick(ticks, fromElapsedMs + ticks * TICK_MS, now()));
        };
    }

    @Override
    public void letGo() {}
}
