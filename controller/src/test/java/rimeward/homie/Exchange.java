package rimeward.homie;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Order;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** A broker as the standard has it, with one device on it: keeps what is retained, and sends back what is subscribed. */
final class Exchange {
    final Map<String, Message> kept = new TreeMap<>();
    final List<Message> sent = new ArrayList<>();
    final List<Order> orders = new ArrayList<>();
    final List<String> lines = new ArrayList<>();
    final Site site;
    final Messaging.Mqtt mqtt;
    HomieDevice device;
    Outlook outlook = Outlook.NONE;
    boolean readable = true;
    private final Deque<Message> under = new ArrayDeque<>();
    private ControlCycle control;
    private ControlState state;
    private long nowMs;

    Exchange(Site site, Messaging.Mqtt mqtt) {
        this.site = site;
        this.mqtt = mqtt;
        device = new HomieDevice(site, mqtt, "1.2.3");
        control = new ControlCycle(site, new DutyLaw());
        state = control.start();
    }

    static Messaging.Mqtt open(String domain) {
        return mqtt(domain, List.of(Messaging.Command.values()));
    }

    static Messaging.Mqtt mqtt(String domain, List<Messaging.Command> commands) {
        return new Messaging.Mqtt(
                "localhost",
                1883,
                new Messaging.Security.Plain(false),
                new Messaging.Login.None(),
                domain,
                commands,
                true);
    }

    /** Where nothing may be asked for and nothing is told of the service itself. */
    static Messaging.Mqtt withoutLog() {
        return new Messaging.Mqtt(
                "localhost",
                1883,
                new Messaging.Security.Plain(false),
                new Messaging.Login.None(),
                "homie",
                List.of(),
                false);
    }

    /** Another run of the program, perhaps with other settings, on the same broker. */
    void restart(Site other, Messaging.Mqtt mqtt) {
        device = new HomieDevice(other, mqtt, "1.2.3");
        control = new ControlCycle(other, new DutyLaw());
        state = control.start();
    }

    void connect() {
        List<Message> old = kept.values().stream()
                .filter(message -> device.subscriptions().stream().anyMatch(filter -> matches(filter, message.topic())))
                .toList();
        if (readable) {
            old.forEach(message -> hear(message.topic(), message.payload(), true, false));
        }
        send(device.atConnect());
    }

    Stepped tick(Frame frame) {
        Stepped stepped = control.step(state, frame, outlook);
        state = stepped.next();
        send(device.after(stepped));
        return stepped;
    }

    void send(List<Message> messages) {
        under.addAll(messages);
        while (!under.isEmpty()) {
            Message message = under.poll();
            sent.add(message);
            if (message.isDeleting()) {
                kept.remove(message.topic());
            } else if (message.retained()) {
                kept.put(message.topic(), message);
            }
            if (readable && device.subscriptions().stream().anyMatch(filter -> matches(filter, message.topic()))) {
                hear(message.topic(), message.payload(), false, false);
            }
        }
    }

    Heard hear(String topic, byte[] payload, boolean retained, boolean duplicate) {
        Heard heard = device.heard(topic, payload, retained, duplicate, nowMs);
        if (heard instanceof Heard.Asked asked) {
            orders.add(asked.order());
        }
        lines.addAll(heard.lines());
        under.addAll(heard.messages());
        return heard;
    }

    void passMs(long ms) {
        nowMs += ms;
    }

    Optional<String> value(String topic) {
        return Optional.ofNullable(kept.get(topic)).map(Message::text);
    }

    String base() {
        return device.will().topic().replaceAll("/\\$state$", "");
    }

    /** MQTT 3.1.1, 4.7: {@code +} stands for one level; a wildcard first does not match {@code $}. */
    static boolean matches(String filter, String topic) {
        if (filter.endsWith("/#")) {
            return topic.startsWith(filter.substring(0, filter.length() - 1));
        }
        String[] want = filter.split("/", -1);
        String[] have = topic.split("/", -1);
        if (want.length != have.length) {
            return false;
        }
        for (int i = 0; i < want.length; i++) {
            if (!want[i].equals("+") && !want[i].equals(have[i])) {
                return false;
            }
        }
        return true;
    }
}
