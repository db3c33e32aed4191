package rimeward.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import rimeward.adapter.forecast.ForecastSources;
import rimeward.adapter.forecast.RunningForecasts;
import rimeward.core.reading.WallTime;
import rimeward.port.Forecasts;
import rimeward.port.HandedReadings;
import rimeward.port.Health;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;
import rimeward.service.BeatTicker;
import rimeward.service.MachineTime;
import rimeward.service.Surroundings;
import rimeward.site.Site;

/** This machine: its clocks, its service manager, and the devices it was given. */
final class LinuxSurroundings implements Surroundings {
    private final Site site;
    private final Sensors sensors;
    private final Relays relays;
    private final HandedReadings handed;
    private final Health health;
    private final Runnable atEnd;
    private final Runnable cycleDone;
    private final MachineTime time = new LinuxTime();
    private @Nullable RunningForecasts forecasts; // the control thread's
    private volatile boolean stopped;
    private volatile @Nullable BeatTicker ticker;

    /**
     * @param site names the source of forecasts
     * @param atEnd puts the relays in their stop state, and ends the devices
     * @param cycleDone called after each finished cycle
     */
    LinuxSurroundings(
            Site site,
            Sensors sensors,
            Relays relays,
            HandedReadings handed,
            Health health,
            Runnable atEnd,
            Runnable cycleDone) {
        this.site = site;
        this.sensors = sensors;
        this.relays = relays;
        this.handed = handed;
        this.health = health;
        this.atEnd = atEnd;
        this.cycleDone = cycleDone;
    }

    @Override
    public Sensors sensors() {
        return sensors;
    }

    @Override
    public Relays relays() {
        return relays;
    }

    @Override
    public HandedReadings handedReadings() {
        return handed;
    }

    @Override
    public Health health() {
        return health;
    }

    @Override
    public Forecasts forecasts() {
        RunningForecasts begun = ForecastSources.of(site, this::now, System::nanoTime);
        forecasts = begun;
        return begun;
    }

    @Override
    public WallTime now() {
        return new WallTime(time.wallMs(), time.isWallSet());
    }

    /** The kernel's name for this run of the machine (random(4)). */
    @Override
    public String boot() {
        try {
            return Files.readString(Path.of("/proc/sys/kernel/random/boot_id")).strip();
        } catch (IOException e) {
            return "";
        }
    }

    @Override
    public Ticker ticker(long fromElapsedMs) {
        BeatTicker begun = new BeatTicker(time, fromElapsedMs, cycleDone);
        ticker = begun;
        if (stopped) {
            begun.stop();
        }
        return begun;
    }

    @Override
    public void letGo() {
        atEnd.run();
        if (forecasts != null) {
            forecasts.close();
        }
    }

    /** No tick follows the one that is at work; from any thread. The caller wakes the sleeper. */
    void stop() {
        stopped = true;
        BeatTicker begun = ticker;
        if (begun != null) {
            begun.stop();
        }
    }
}
