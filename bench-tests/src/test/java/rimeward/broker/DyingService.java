package rimeward.broker;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import rimeward.adapter.config.SiteSettings;
import rimeward.alert.Alert;
import rimeward.assembly.Audience;
import rimeward.assembly.Service;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Answer;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.port.ForecastSource;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;
import rimeward.service.Surroundings;
import rimeward.site.Messaging;
import rimeward.site.Site;

/**
 * The whole service in a process of its own, in a tunnel whose sensors all fail for a moment again and again, until somebody kills it. Prints
 * a line for each alert that is in the record by then: its id and what became of it.
 *
 * <p>Arguments: the settings, the data folder, the broker's port, authority, user and password file, the time of day to begin with in s, and
 * how many ticks apart the failures are; 0 for none.
 */
final class DyingService implements Surroundings, Audience {
    private static final long TICK_MS = 30_000;
    private static final long PACE_NS = 2_000_000;

    private final Site site;
    private final long startMs;
    private final long failsEvery;
    private long ticks;

    private DyingService(Site site, long startMs, long failsEvery) {
        this.site = site;
        this.startMs = startMs;
        this.failsEvery = failsEvery;
    }

    public static void main(String[] args) {
        Messaging.Mqtt broker = new Messaging.Mqtt(
                Mosquitto.HOST,
                Integer.parseInt(args[2]),
                new Messaging.Security.Tls(new Messaging.Trust.Own(args[3]), new Messaging.Identity.None()),
                new Messaging.Login.Password(args[4], args[5]),
                "homie",
                List.of(),
                false);
        Site site = SiteSettings.read(Path.of(args[0])).with(broker);
        DyingService here = new DyingService(site, Long.parseLong(args[6]) * 1000, Long.parseLong(args[7]));
        new Service(site, new DutyLaw(), Path.of(args[1]), here, here, System::nanoTime).run();
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
    public ForecastSource forecasts() {
        return now -> Outlook.NONE;
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
            return Optional.of(new Tick(ticks, fromElapsedMs + ticks * TICK_MS, now()));
        };
    }

    @Override
    public void letGo() {}

    @Override
    public void says(String line) {}

    @Override
    public void decided(Stepped stepped) {}

    @Override
    public void answered(Answer answer) {}

    @Override
    public void told(Alert alert) {
        System.out.println(KilledServiceTest.MARK + alert.id() + " " + alert.change());
    }
}
