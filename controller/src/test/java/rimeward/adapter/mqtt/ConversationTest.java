package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import rimeward.alert.Alert;
import rimeward.alert.AlertKind;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.homie.Message;
import rimeward.port.Outbox;

/** What the grower's phone gets, whatever the broker does meanwhile. Time here is the test's own. */
class ConversationTest {
    private static final long MINUTE_MS = 60_000;
    private static final long HOUR_MS = 3_600_000;

    private final FakeBell bell = new FakeBell();
    private final FakeBroker broker = new FakeBroker(bell);
    private final Post post = new Post(bell);
    private final Drawer drawer = new Drawer();
    private final List<String> orders = new ArrayList<>();
    private final Conversation conversation =
            new Conversation("a broker", broker, new Tree(), drawer, post, bell, new Rests("rests of hallin-rigg"));

    private void raise(int number) {
        drawer.unsent.put(number, entry(number));
        post.news();
    }

    private void runUntil(long endMs) throws InterruptedException {
        bell.at(endMs, post::stop);
        conversation.run();
    }

    private List<String> alerts() {
        return broker.log.stream()
                .filter(line -> line.contains("$alert"))
                .filter(line -> !line.startsWith("listen"))
                .toList();
    }

    @Test
    void itListensBeforeItIsReadyAndTakesLeaveInTheEnd() throws InterruptedException {
        runUntil(1000);
        assertThat(broker.log).containsExactly("listen $alert/+", "$state=init", "$state=ready", "$state=disconnected");
        assertThat(broker.retained).containsEntry("$state", "disconnected");
        assertThat(broker.open).isZero();
    }

    @Test
    void alertsArriveInOrderAndAreMarkedAfterTheirEcho() throws InterruptedException {
        bell.at(1000, () -> raise(1)).at(1000, () -> raise(2)).at(5000, () -> raise(3));
        runUntil(6000);
        assertThat(alerts()).containsExactly("$alert/1=text 1", "$alert/2=text 2", "$alert/3=text 3");
        assertThat(drawer.sent).containsExactly(1, 2, 3);
    }

    @Test
    void whatAnEarlierRunLeftIsSentFirst() throws InterruptedException {
        for (int i = 1; i <= 100; i++) {
            drawer.unsent.put(i, entry(i)); // nobody says that there is news
        }
        runUntil(1000);
        assertThat(drawer.sent).hasSize(100).isSorted();
        assertThat(drawer.mostAsked).as("held in memory at once").isLessThan(50);
    }

    @Test
    void aBrokerThatIsAwayForHoursGetsEverythingWithinAMinuteOfItsReturn() throws InterruptedException {
        bell.at(1000, broker::dies);
        for (int i = 1; i <= 20; i++) {
            int number = i;
            bell.at(i * (6 * MINUTE_MS), () -> raise(number));
        }
        bell.at(3 * HOUR_MS, () -> broker.mood = FakeBroker.Mood.WELL);
        runUntil(3 * HOUR_MS + MINUTE_MS);
        assertThat(drawer.sent).hasSize(20).isSorted();
        assertThat(alerts()).hasSize(20);
    }

    @Test
    void soDoesOneThatIsFrozenForThreeHours() throws InterruptedException {
        List<Boolean> failing = new ArrayList<>();
        broker.mood = FakeBroker.Mood.FROZEN;
        bell.at(MINUTE_MS, () -> raise(1)).at(5 * MINUTE_MS, () -> failing.add(conversation.isFailing()));
        bell.at(HOUR_MS, () -> failing.add(conversation.isFailing()));
        bell.at(3 * HOUR_MS, () -> broker.mood = FakeBroker.Mood.WELL);
        bell.at(3 * HOUR_MS + MINUTE_MS, () -> failing.add(conversation.isFailing()));
        runUntil(3 * HOUR_MS + MINUTE_MS + 1);
        assertThat(drawer.sent).containsExactly(1);
        assertThat(failing).as("after 5 minutes, an hour, and when all is well").containsExactly(false, true, false);
        assertThat(broker.lines).as("attempts").isBetween(240, 720);
        assertThat(broker.open).isZero();
    }

    @Test
    void aLineThatBreaksInTheMiddleOfAnAlertCostsNone() throws InterruptedException {
        bell.at(1000, () -> broker.mood = FakeBroker.Mood.CUTS_ALERTS).at(1001, () -> raise(1));
        bell.at(20_000, () -> broker.mood = FakeBroker.Mood.WELL).at(20_001, () -> raise(2));
        runUntil(2 * MINUTE_MS);
        assertThat(alerts()).containsExactly("$alert/1=text 1", "$alert/2=text 2");
        assertThat(drawer.sent).containsExactly(1, 2);
    }

    @Test
    void aBrokerThatTakesAlertsAndPassesNoneOnIsToldOfAndTriedAgain() throws InterruptedException {
        List<Boolean> failing = new ArrayList<>();
        broker.mood = FakeBroker.Mood.DENIES_ALERTS;
        bell.at(1000, () -> raise(1)).at(1500, () -> raise(2));
        bell.at(MINUTE_MS, () -> failing.add(conversation.isFailing()));
        bell.at(HOUR_MS, () -> broker.mood = FakeBroker.Mood.WELL);
        bell.at(HOUR_MS + 6 * MINUTE_MS, () -> failing.add(conversation.isFailing()));
        runUntil(HOUR_MS + 6 * MINUTE_MS + 1);
        assertThat(failing).containsExactly(true, false);
        assertThat(drawer.sent).containsExactly(1, 2);
        assertThat(broker.lines).as("the line itself stood").isEqualTo(1);
    }

    @Test
    void anOldRetainedAlertIsNotTakenForTheEcho() throws InterruptedException {
        broker.mood = FakeBroker.Mood.DENIES_ALERTS;
        bell.at(1000, () -> raise(1)).at(2000, () -> broker.says("$alert/1", "text 1", true));
        runUntil(3000);
        assertThat(drawer.sent).isEmpty();
        assertThat(drawer.unsent).containsKey(1);
    }

    @Test
    void aFloodOfOrdersIsBoundedAndAlertsPass() throws InterruptedException {
        bell.at(1000, () -> {
            for (int i = 0; i < 100_000; i++) {
                broker.says("set", "now", false);
            }
            raise(1);
        });
        runUntil(2 * MINUTE_MS);
        assertThat(orders).hasSizeBetween(1, 1000);
        assertThat(drawer.sent).containsExactly(1);
    }

    @Test
    void restsGrowAndDifferFromTunnelToTunnel() {
        Rests one = new Rests("one");
        Rests same = new Rests("one");
        Rests other = new Rests("other");
        List<Long> rests = new ArrayList<>();
        List<Long> others = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            long restMs = one.nextMs();
            assertThat(restMs).isEqualTo(same.nextMs()).isBetween(500L, Rests.LONGEST_MS);
            rests.add(restMs);
            others.add(other.nextMs());
        }
        assertThat(rests.get(19)).isGreaterThan(Rests.LONGEST_MS / 2 - 1);
        assertThat(rests).isNotEqualTo(others);
    }

    private static Outbox.Entry entry(int number) {
        return new Outbox.Entry(
                number,
                new Alert(
                        "floor-crossed-hallin-rigg-1",
                        AlertKind.FLOOR_CROSSED,
                        "hallin-rigg",
                        Alert.Change.RAISED,
                        new Tick(number, number * 5000L, new WallTime(number * 5000L, true)),
                        "text " + number));
    }

    /** Unsent alerts by their number. */
    private static final class Drawer implements Outbox {
        final TreeMap<Integer, Entry> unsent = new TreeMap<>();
        final List<Integer> sent = new ArrayList<>();
        int mostAsked;

        @Override
        public void ask(int most, Consumer<List<Entry>> answer) {
            mostAsked = Math.max(mostAsked, most);
            answer.accept(unsent.values().stream().limit(most).toList());
        }

        @Override
        public void sent(Entry entry, long epochMs) {
            unsent.remove((int) entry.number());
            sent.add((int) entry.number());
        }
    }

    private final class Tree implements DeviceTree {
        private static Message said(String topic, String text) {
            return new Message(topic, text.getBytes(UTF_8), 1, true);
        }

        @Override
        public Message will() {
            return said("$state", "lost");
        }

        @Override
        public List<String> subscriptions() {
            return List.of("$alert/+");
        }

        @Override
        public List<Message> atConnect() {
            return List.of(said("$state", "init"), said("$state", "ready"));
        }

        @Override
        public List<Message> after(Stepped stepped) {
            return List.of();
        }

        @Override
        public List<Message> of(Outbox.Entry entry) {
            return List.of(said("$alert/" + entry.number(), entry.alert().text()));
        }

        @Override
        public List<Message> atStop() {
            return List.of(said("$state", "disconnected"));
        }

        @Override
        public boolean isReady() {
            return true;
        }

        @Override
        public List<Message> answered(Answer answer) {
            return List.of();
        }

        @Override
        public void lineBroke() {}

        @Override
        public List<Message> heard(Post.Heard heard, long nowMs) {
            orders.add(heard.topic());
            return List.of();
        }

        @Override
        public List<Message> tidy(long nowMs) {
            return List.of();
        }

        @Override
        public List<Message> planned(NightPlan plan) {
            return List.of();
        }

        @Override
        public List<Message> reckoned(PastNight night) {
            return List.of();
        }

        @Override
        public List<Message> says(String line) {
            return List.of();
        }
    }
}
