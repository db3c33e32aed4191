package rimeward.assembly;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.adapter.journal.RecordFile;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.fixture.Frames;
import rimeward.fixture.Sites;
import rimeward.port.Forecasts;
import rimeward.port.Orders;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.port.Ticker;
import rimeward.service.OrderQueue;
import rimeward.service.Surroundings;
import rimeward.site.Plant;
import rimeward.site.RelaySet;
import rimeward.site.Site;

class ServiceTest {
    private static final Site SITE = Sites.metered();

    @TempDir
    Path folder;

    private final Frames frames = Frames.steady(4.6, 60);
    private final List<String> done = Collections.synchronizedList(new ArrayList<>());
    private final List<Answer> answers = Collections.synchronizedList(new ArrayList<>());
    private final List<Alert> told = Collections.synchronizedList(new ArrayList<>());
    private Path data = Path.of("");
    private boolean brokenClock;
    private Site site = SITE;
    private Orders orders = Orders.none();

    private void run(int ticks) {
        new Service(site, new DutyLaw(), data, new ByHand(ticks), orders, new Ear(), System::nanoTime).run();
    }

    @Test
    void whatWasDecidedIsInTheRecordAndTheNextStartTakesItUp() {
        data = folder;
        run(30);
        assertThat(RecordFile.frames(folder.resolve(Service.RECORD))).isNotEmpty();
        run(30);
        assertThat(done).anyMatch(line -> line.startsWith("takes up where it left off"));
        assertThat(told).extracting(Alert::kind).contains(AlertKind.SERVICE_RESTARTED);
    }

    @Test
    void whatWasOrderedIsAnsweredAndTheNextStartHoldsItUntilTheSettingsChange() {
        data = folder;
        OrderQueue queue = new OrderQueue();
        orders = queue;
        queue.offer(new Order.SetFloor(6));
        run(3);
        assertThat(answers).singleElement().matches(Answer::taken);
        done.clear();
        run(3);
        assertThat(done).contains("holds the floor that was asked for, 6.0 °C, and not the settings' 4.0 °C");
        site = Sites.of(new Plant("lemon", 5));
        done.clear();
        run(3);
        assertThat(done).anyMatch(line -> line.contains("falls with the settings it was asked against"));
    }

    @Test
    void aDamagedRecordIsSetAsideAndTheGrowerHearsOfItOnce() throws IOException {
        data = folder;
        Files.writeString(folder.resolve(Service.RECORD), "this is no database, whatever it was".repeat(40), UTF_8);
        run(30);
        assertThat(told).extracting(Alert::kind).containsOnlyOnce(AlertKind.RECORD_SET_ASIDE);
        assertThat(done).contains("decided", "let go");
    }

    @Test
    void withoutAnywhereToWriteControlGoesOnAndTheGrowerIsTold() throws IOException {
        data = Files.writeString(folder.resolve("a file"), "", UTF_8); // no folder: nothing can be made below it
        run(30);
        assertThat(told)
                .filteredOn(alert -> alert.kind() == AlertKind.DOOR_FAILED)
                .singleElement()
                .satisfies(alert -> assertThat(alert.text()).contains("Make room on the memory card"));
        assertThat(done).contains("decided", "let go");
    }

    @Test
    void howeverControlEndsTheRelaysAreLetGo() {
        data = folder;
        brokenClock = true;
        assertThatThrownBy(() -> run(3)).hasMessage("no time");
        assertThat(done).last().isEqualTo("let go");
    }

    /** A tunnel whose time and readings are the test's. */
    private final class ByHand implements Surroundings {
        private int ticksLeft;
        private Frame now = frames.after(5);

        ByHand(int ticks) {
            ticksLeft = ticks;
        }

        @Override
        public Sensors sensors() {
            return () -> now.senses();
        }

        @Override
        public Relays relays() {
            return (RelaySet set) -> {};
        }

        @Override
        public Forecasts forecasts() {
            return Forecasts.none();
        }

        @Override
        public WallTime now() {
            return now.tick().wall();
        }

        @Override
        public String boot() {
            return "one";
        }

        @Override
        public Ticker ticker(long fromElapsedMs) {
            long beganMs = now.tick().elapsedMs();
            return () -> {
                if (brokenClock) {
                    throw new IllegalStateException("no time");
                }
                now = frames.after(5);
                Tick tick = now.tick();
                Tick counted = new Tick(tick.number(), fromElapsedMs + tick.elapsedMs() - beganMs, tick.wall());
                return ticksLeft-- > 0 ? Optional.of(counted) : Optional.empty();
            };
        }

        @Override
        public void letGo() {
            done.add("let go");
        }
    }

    private final class Ear implements Audience {
        @Override
        public void says(String line) {
            done.add(line);
        }

        @Override
        public void decided(Stepped stepped) {
            done.add("decided");
        }

        @Override
        public void answered(Answer answer) {
            answers.add(answer);
        }

        @Override
        public void told(Alert alert) {
            told.add(alert);
        }
    }
}
