package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.homie.Heard;
import rimeward.homie.HomieDevice;
import rimeward.homie.Message;
import rimeward.port.Outbox;

/** The Homie device on the line: what it wants written down goes to the log, what is asked of it goes on, and so do readings that others hand in. */
final class HomieTree implements DeviceTree {
    private static final Logger LOG = LoggerFactory.getLogger(HomieTree.class);
    private static final byte[] READY = "ready".getBytes(UTF_8);

    private final HomieDevice device;
    private final Consumer<Order> orders;
    private final HandedTopics handed;
    private boolean ready;

    HomieTree(HomieDevice device, Consumer<Order> orders, HandedTopics handed) {
        this.device = device;
        this.orders = orders;
        this.handed = handed;
    }

    @Override
    public Message will() {
        return device.will();
    }

    @Override
    public List<String> subscriptions() {
        List<String> filters = new ArrayList<>(device.subscriptions());
        filters.addAll(handed.topics());
        return filters;
    }

    @Override
    public List<Message> atConnect() {
        return device.atConnect();
    }

    @Override
    public boolean isReady() {
        return ready;
    }

    @Override
    public List<Message> after(Stepped stepped) {
        return noticed(device.after(stepped));
    }

    @Override
    public List<Message> of(Outbox.Entry entry) {
        return device.of(entry.number(), entry.alert());
    }

    @Override
    public List<Message> answered(Answer answer) {
        return noticed(device.answered(answer));
    }

    @Override
    public List<Message> planned(NightPlan plan) {
        return noticed(device.planned(plan));
    }

    @Override
    public List<Message> reckoned(PastNight night) {
        return noticed(device.reckoned(night));
    }

    @Override
    public List<Message> says(String line) {
        return device.log(HomieDevice.Level.INFO, line);
    }

    @Override
    public List<Message> atStop() {
        return device.atStop();
    }

    @Override
    public void lineBroke() {
        ready = false;
        device.atStop(); // it takes note that there is no line; nobody hears the words
    }

    @Override
    public List<Message> heard(Post.Heard heard, long nowMs) {
        if (handed.has(heard.topic())) {
            handed.take(heard);
            return List.of();
        }
        Heard found = device.heard(heard.topic(), heard.payload(), heard.retained(), heard.duplicate(), nowMs);
        if (found instanceof Heard.Asked asked) {
            orders.accept(asked.order());
        }
        List<Message> messages = new ArrayList<>(noticed(found.messages()));
        messages.addAll(written(found.lines()));
        return messages;
    }

    @Override
    public List<Message> tidy(long nowMs) {
        return written(device.linesDue(nowMs));
    }

    /** In our own log and, where that is wanted, in the device's. */
    private List<Message> written(List<String> lines) {
        List<Message> messages = new ArrayList<>();
        for (String line : lines) {
            LOG.info(line);
            messages.addAll(device.log(HomieDevice.Level.WARN, line));
        }
        return messages;
    }

    private List<Message> noticed(List<Message> messages) {
        for (Message each : messages) {
            ready |= each.topic().endsWith("/$state") && Arrays.equals(each.payload(), READY);
        }
        return messages;
    }
}
