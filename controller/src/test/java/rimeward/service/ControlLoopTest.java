package rimeward.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.alert.AlertBoard;
import rimeward.alert.AlertKind;
import rimeward.core.ControlCycle;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.port.ForecastSource;
import rimeward.port.Health;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class ControlLoopTest {
    private final Site site = Sites.metered();
    private final Frames frames = Frames.steady(8, 60);
    private final List<String> log = new ArrayList<>();
    private final List<RelaySet> commands = new ArrayList<>();
    private final List<AlertKind> told = new ArrayList<>();
    private Health health = Health.sound();
    private Frame now = frames.after(0);
    private ForecastSource forecasts = tick -> Outlook.NONE;
    private int ticksLeft;

    private void run(int ticks) {
        ticksLeft = ticks;
        new ControlLoop(
                        site,
                        new ControlCycle(site, new DutyLaw()),
                        new AlertBoard(site),
                        () -> {
                            log.add("tick");
                            now = frames.after(5);
                            return ticksLeft-- > 0 ? Optional.of(now.tick()) : Optional.empty();
                        },
                        () -> {
                            log.add("latch");
                            return now.senses();
                        },
                        forecasts,
                        set -> {
                            log.add("relays");
                            commands.add(set);
                        },
                        (stepped, alerts) -> log.add(
                                "record " + stepped.outcome().frame().tick().number()),
                        StateKeeper.forgetful(),
                        alert -> told.add(alert.kind()),
                        Grower.silent(),
                        health)
                .run();
    }

    @Test
    void eachTickLatchesOnceSwitchesAndRecordsInThatOrder() {
        run(2);
        assertThat(log)
                .containsExactly("tick", "latch", "relays", "record 1", "tick", "latch", "relays", "record 2", "tick");
        assertThat(told).isEmpty();
    }

    @Test
    void whatTheGuardSaysIsWhatTheRelaysGet() {
        frames.inside(4.5);
        run(1);
        assertThat(commands).containsExactly(RelaySet.of(1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 9999, -273.15})
    void aForecastOfNonsenseIsNoForecastAndBlindTheHeaterGoesByTheColdOfLate(double lowestC) {
        for (int sensor = 0; sensor < 4; sensor++) {
            frames.air(sensor, Reading.NO_ANSWER);
        }
        forecasts = tick -> new Outlook.Night(1, lowestC, 1, 3600);
        run(1);
        assertThat(commands).containsExactly(RelaySet.of(1));
    }

    @Test
    void anAilingComputerIsTold() {
        health = new Health() {
            @Override
            public boolean isVoltageLow() {
                return true;
            }

            @Override
            public boolean isDiskNearlyFull() {
                return true;
            }
        };
        run(20); // 100 s
        assertThat(told).containsExactly(AlertKind.UNDER_VOLTAGE, AlertKind.DISK_NEARLY_FULL);
    }
}
