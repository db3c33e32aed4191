package rimeward.assembly;

import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import rimeward.adapter.mqtt.MqttCourier;
import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.tunnel.Lesson;
import rimeward.port.Courier;
import rimeward.port.HandedReadings;
import rimeward.port.Outbox;
import rimeward.site.Messaging;
import rimeward.site.Site;

/**
 * Passes on to a broker what the audience hears, where the settings name one; without one no thread is begun and no library loaded. It
 * carries no alert itself: they go by the outbox, and it only says that there is something in it.
 */
final class Messenger implements Audience, Courier, AutoCloseable {
    private final Audience audience;
    private volatile @Nullable MqttCourier courier;
    private volatile boolean missing;

    Messenger(Audience audience) {
        this.audience = audience;
    }

    /**
     * Begins.
     *
     * @param orders takes what the grower asks for
     * @param readings takes what others hand in
     * @param nanoTime monotonic time, ns
     */
    void begin(Site site, Outbox outbox, Consumer<Order> orders, HandedReadings readings, LongSupplier nanoTime) {
        if (!(site.messaging() instanceof Messaging.Mqtt mqtt)) {
            return;
        }
        try {
            courier = MqttCourier.start(site, mqtt, outbox, orders, readings, nanoTime);
        } catch (RuntimeException | LinkageError e) {
            missing = true;
            audience.says("messages cannot be sent, and control goes on without them: " + e);
        }
    }

    @Override
    public void says(String line) {
        audience.says(line);
        pass(begun -> begun.says(line));
    }

    @Override
    public void decided(Stepped stepped) {
        audience.decided(stepped);
        pass(begun -> begun.decided(stepped));
    }

    @Override
    public void answered(Answer answer) {
        audience.answered(answer);
        pass(begun -> begun.answered(answer));
    }

    @Override
    public void planned(NightPlan plan, Alternatives others) {
        audience.planned(plan, others);
        pass(begun -> begun.planned(plan));
    }

    @Override
    public void promised(NightPlan plan) {
        audience.promised(plan);
    }

    @Override
    public void learned(Lesson lesson) {
        audience.learned(lesson);
    }

    @Override
    public void reckoned(PastNight night) {
        audience.reckoned(night);
        pass(begun -> begun.reckoned(night));
    }

    @Override
    public void told(Alert alert) {
        audience.told(alert);
        pass(MqttCourier::news);
    }

    /** Nothing: the record tells each, once it is safe. */
    @Override
    public void tell(Alert alert) {}

    @Override
    public boolean isFailing() {
        MqttCourier begun = courier;
        return missing || (begun != null && begun.isFailing());
    }

    @Override
    public void close() {
        pass(MqttCourier::close);
    }

    private void pass(Consumer<MqttCourier> on) {
        MqttCourier begun = courier;
        if (begun != null) {
            on.accept(begun);
        }
    }
}
