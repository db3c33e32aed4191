package rimeward.alert;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.site.Degrees;
import rimeward.site.Site;

/** What a grower reads in a night in which most things go wrong, and that nothing flaps. */
class NightOfAlertsTest {
    private Site site = Sites.metered();
    private AlertBoard board = new AlertBoard(site);
    private final ControlCycle cycle = new ControlCycle(site, new DutyLaw());
    private final Frames frames = Frames.steady(8, 60);
    private ControlState state = cycle.start();
    private Outlook outlook = Outlook.NONE;
    private Troubles troubles = Troubles.NONE;
    private final List<Alert> all = new ArrayList<>();

    private void run(double everyS, int ticks) {
        for (int i = 0; i < ticks; i++) {
            frames.jitter(0.01 * (i % 2));
            Stepped stepped = cycle.step(state, frames.after(everyS), outlook);
            state = stepped.next();
            all.addAll(board.after(stepped.outcome(), troubles));
        }
    }

    private void night() {
        run(5, 30);
        outlook = new Outlook.Night(1, -18, 1.5, 40_000);
        run(5, 130); // frost is forecast
        frames.air(1, Reading.NO_ANSWER);
        run(5, 40);
        frames.air(1, Frames.value(8));
        frames.door(Signal.ON);
        frames.outside(-3);
        run(5, 200);
        frames.door(Signal.OFF);
        frames.tank(Signal.ON);
        run(5, 20);
        frames.inside(3.2); // no meter shows any power
        run(5, 200);
        frames.after(7 * 3600 + 600);
        run(5, 2);
        troubles = new Weak();
        run(5, 40);
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.air(sensor, Reading.NO_ANSWER);
        }
        run(5, 40);
        for (int sensor = 0; sensor < 3; sensor++) {
            frames.air(sensor, Frames.value(9));
            frames.rh(sensor, Frames.value(97));
        }
        run(5, 20_000);
    }

    @ParameterizedTest
    @EnumSource(Degrees.class)
    void everyTextIsApproved(Degrees degrees) throws IOException {
        site = site.withDegrees(degrees);
        board = new AlertBoard(site);
        night();
        StringBuilder text = new StringBuilder();
        for (Alert alert : all) {
            if (alert.change() != Alert.Change.REPEATED) {
                text.append(alert.kind().severity().word())
                        .append(' ')
                        .append(alert.id().replaceAll("-[0-9]+$", ""));
                text.append(' ')
                        .append(alert.change())
                        .append("\n    ")
                        .append(alert.text())
                        .append('\n');
            }
        }
        String name = "night-" + (degrees == Degrees.CELSIUS ? "celsius" : "fahrenheit") + ".txt";
        try (InputStream approved = Objects.requireNonNull(NightOfAlertsTest.class.getResourceAsStream(name), name)) {
            assertThat(text).hasToString(new String(approved.readAllBytes(), UTF_8));
        }
    }

    @Test
    void noiseAroundEveryLimitRaisesFewAlerts() {
        Random random = new Random(20_140_127);
        for (int i = 0; i < 6 * 720; i++) {
            frames.inside(4 + random.nextGaussian() * 0.3);
            frames.outside(-16 + random.nextGaussian());
            for (int sensor = 0; sensor < 3; sensor++) {
                frames.rh(sensor, Frames.value(90 + random.nextGaussian()));
            }
            frames.tank(random.nextBoolean() ? Signal.ON : Signal.OFF);
            frames.door(random.nextBoolean() ? Signal.ON : Signal.OFF);
            outlook = new Outlook.Night(1, -14 + random.nextGaussian() * 0.5, 1.5, 40_000);
            run(5, 1);
        }
        Map<String, Integer> raised = new HashMap<>();
        all.stream()
                .filter(Alert::isNew)
                .forEach(alert -> raised.merge(alert.kind() + alert.subject(), 1, Integer::sum));
        assertThat(raised.values()).isNotEmpty().allMatch(times -> times <= 6);
        assertThat(all.stream().map(Alert::id).distinct().count())
                .isEqualTo(all.stream().filter(Alert::isNew).count());
    }

    /** A computer that is failing. */
    private static final class Weak implements Troubles {
        @Override
        public boolean isFailing(Door door) {
            return false;
        }

        @Override
        public boolean isAnyFailing() {
            return false;
        }

        @Override
        public int timesRecordSetAside() {
            return 1;
        }

        @Override
        public boolean hasClockJumped() {
            return false;
        }

        @Override
        public boolean isTickLate() {
            return true;
        }

        @Override
        public boolean isDiskNearlyFull() {
            return true;
        }

        @Override
        public boolean isVoltageLow() {
            return true;
        }
    }
}
