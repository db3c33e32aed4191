package rimeward.adapter.mqtt;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.homie.HomieDevice;
import rimeward.port.HandedReadings;
import rimeward.port.Outbox;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** Tells the grower by a broker. Any thread may hand over, and never waits; one thread of its own speaks. */
public final class MqttCourier implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(MqttCourier.class);

    /** An orderly end waits for the broker so long at most. */
    private static final long FAREWELL_MS = 3_000;

    private final Post post;
    private final Conversation conversation;
    private final ScheduledExecutorService watchdog;
    private final Thread thread;

    private MqttCourier(Post post, Conversation conversation, ScheduledExecutorService watchdog) {
        this.post = post;
        this.conversation = conversation;
        this.watchdog = watchdog;
        thread = new Thread(this::run, "mqtt");
        thread.setDaemon(true);
    }

    /**
     * Begins to speak.
     *
     * @param orders takes what the grower asks for, on the line's thread; must not block
     * @param readings takes what others hand in, on the same thread
     * @param nanoTime monotonic time, ns: {@code System.nanoTime}
     */
    public static MqttCourier start(
            Site site,
            Messaging.Mqtt settings,
            Outbox outbox,
            Consumer<Order> orders,
            HandedReadings readings,
            LongSupplier nanoTime) {
        String version = MqttCourier.class.getPackage().getImplementationVersion();
        HomieDevice device = new HomieDevice(site, settings, version == null ? "unknown" : version);
        Bell bell = new SemaphoreBell(nanoTime);
        Post post = new Post(bell);
        ScheduledExecutorService watchdog = Executors.newSingleThreadScheduledExecutor(run -> {
            Thread made = new Thread(run, "mqtt watchdog");
            made.setDaemon(true);
            return made;
        });
        MqttCourier courier = new MqttCourier(
                post,
                new Conversation(
                        settings.inWords(),
                        PahoLine.maker(settings, site.id(), watchdog),
                        new HomieTree(device, orders, new HandedTopics(site.sensors(), readings)),
                        outbox,
                        post,
                        bell,
                        new Rests("rests of " + site.id())),
                watchdog);
        courier.thread.start();
        return courier;
    }

    private void run() {
        try {
            conversation.run();
        } catch (InterruptedException e) {
            LOG.warn("speaking to the broker was interrupted and ends");
        } finally {
            watchdog.shutdownNow();
        }
    }

    /** A decision was made. */
    public void decided(Stepped stepped) {
        post.decided(stepped);
    }

    /** The service says something of itself. */
    public void says(String line) {
        post.says(line);
    }

    /** What became of an order. */
    public void answered(Answer answer) {
        post.answered(answer);
    }

    /** There is a newer plan of the coming night. */
    public void planned(NightPlan plan) {
        post.planned(plan);
    }

    /** A night is over. */
    public void reckoned(PastNight night) {
        post.reckoned(night);
    }

    /** There may be something new in the outbox. */
    public void news() {
        post.news();
    }

    /** Whether alerts may not reach the grower: no line for ten minutes, or a broker that does not pass them on. */
    public boolean isFailing() {
        return conversation.isFailing();
    }

    /** Takes leave of the broker, and waits for that a few seconds at most. After the relays were let go. */
    @Override
    public void close() {
        post.stop();
        try {
            thread.join(FAREWELL_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
