package rimeward.adapter.mqtt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.homie.Message;
import rimeward.site.Messaging;

/**
 * A line by Paho, a new client for each. Nothing here waits without a limit: Paho's own waits have one, and a watchdog cuts the sockets
 * should a call take longer all the same.
 */
final class PahoLine implements Line {
    /** A peer that accepts and never answers is given up after this, ms. With the longest rest it leaves a minute some room. */
    static final long ANSWER_MS = 15_000;

    private static final Logger LOG = LoggerFactory.getLogger(PahoLine.class);
    private static final int CONNECT_S = 10;
    private static final int KEEP_ALIVE_S = 20;

    /** Mosquitto 2.0 acknowledges more than its max_inflight_messages (20) of QoS 2 at once, and drops the rest: seen with 32. */
    private static final int AT_ONCE = 10;

    private static final int REFUSED = 0x80; // MQTT 3.1.1, 3.9.3
    private static final long GRACE_MS = 500;

    private final Messaging.Mqtt settings;
    private final String clientId;
    private final ScheduledExecutorService watchdog;
    private final Ear ear;
    private @Nullable MqttAsyncClient client;
    private @Nullable LineSockets sockets;

    private PahoLine(Messaging.Mqtt settings, String clientId, ScheduledExecutorService watchdog, Ear ear) {
        this.settings = settings;
        this.clientId = clientId;
        this.watchdog = watchdog;
        this.ear = ear;
    }

    /** Makes lines to this broker, which knows us by the device's id; two lines of one device drive each other out. */
    static Line.Maker maker(Messaging.Mqtt settings, String device, ScheduledExecutorService watchdog) {
        return ear -> new PahoLine(settings, "rimeward-" + device, watchdog, ear);
    }

    @Override
    public void open(Message will) throws LineFailed {
        LineSockets mine =
                new LineSockets(settings.security() instanceof Messaging.Security.Tls tls ? Secrets.tls(tls) : null);
        sockets = mine;
        MqttConnectOptions options = options(will, mine);
        within("connect", () -> {
            String host = settings.host().contains(":") ? "[" + settings.host() + "]" : settings.host();
            MqttAsyncClient made =
                    new MqttAsyncClient("tcp://" + host + ":" + settings.port(), clientId, new MemoryPersistence());
            client = made;
            made.setCallback(new Told());
            made.connect(options).waitForCompletion(ANSWER_MS);
        });
    }

    private MqttConnectOptions options(Message will, LineSockets through) throws LineFailed {
        MqttConnectOptions options = new MqttConnectOptions();
        options.setAutomaticReconnect(false);
        options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
        options.setCleanSession(true);
        options.setConnectionTimeout(CONNECT_S);
        options.setKeepAliveInterval(KEEP_ALIVE_S);
        options.setMaxInflight(2 * AT_ONCE);
        options.setSocketFactory(through);
        options.setWill(will.topic(), will.payload(), will.qos(), will.retained());
        if (settings.login() instanceof Messaging.Login.Password login) {
            options.setUserName(login.user());
            options.setPassword(Secrets.password(login.passwordFile()));
        }
        return options;
    }

    @Override
    public void listen(List<String> filters) throws LineFailed {
        int[] qos = new int[filters.size()];
        Arrays.fill(qos, 1);
        within("subscribe", () -> {
            IMqttToken token = connected().subscribe(filters.toArray(new String[0]), qos);
            token.waitForCompletion(ANSWER_MS);
            int[] granted = token.getGrantedQos();
            for (int i = 0; granted != null && i < granted.length; i++) {
                if (granted[i] == REFUSED) {
                    LOG.warn("the broker forbids us to listen to {}; look at its ACL", filters.get(i));
                }
            }
        });
    }

    @Override
    public void send(List<Message> messages) throws LineFailed {
        for (int from = 0; from < messages.size(); from += AT_ONCE) {
            List<Message> some = messages.subList(from, Math.min(messages.size(), from + AT_ONCE));
            within("publish", () -> sendAtOnce(some));
        }
    }

    private void sendAtOnce(List<Message> some) throws MqttException, LineFailed {
        List<IMqttDeliveryToken> tokens = new ArrayList<>();
        for (Message each : some) {
            tokens.add(connected().publish(each.topic(), each.payload(), each.qos(), each.retained()));
        }
        for (IMqttDeliveryToken token : tokens) {
            token.waitForCompletion(ANSWER_MS);
        }
    }

    @Override
    public void leave() throws LineFailed {
        within("disconnect", () -> connected().disconnect(GRACE_MS).waitForCompletion(2 * GRACE_MS));
    }

    @Override
    public void close() {
        Future<?> cut = watchdog.schedule(this::cut, 4 * GRACE_MS, TimeUnit.MILLISECONDS);
        try {
            MqttAsyncClient made = client;
            if (made != null) {
                letGo(made);
            }
        } finally {
            cut.cancel(false);
            cut();
        }
    }

    private static void letGo(MqttAsyncClient made) {
        try {
            made.disconnectForcibly(GRACE_MS, GRACE_MS, false);
        } catch (MqttException | RuntimeException e) {
            LOG.debug("the line did not end as it should", e);
        }
        try {
            made.close(true);
        } catch (MqttException | RuntimeException e) {
            LOG.debug("the line did not close as it should", e);
        }
    }

    private void cut() {
        LineSockets mine = sockets;
        if (mine != null) {
            mine.cut();
        }
    }

    private MqttAsyncClient connected() throws LineFailed {
        MqttAsyncClient made = client;
        if (made == null) {
            throw new LineFailed("it is not open");
        }
        return made;
    }

    /** Something that waits for the broker. */
    private interface Talk {
        void run() throws MqttException, LineFailed;
    }

    private void within(String what, Talk talk) throws LineFailed {
        Future<?> cut = watchdog.schedule(this::cut, ANSWER_MS + GRACE_MS, TimeUnit.MILLISECONDS);
        try {
            talk.run();
        } catch (MqttException e) {
            throw new LineFailed(what + ": " + inWords(e), e);
        } finally {
            cut.cancel(false);
        }
    }

    private static String inWords(Throwable why) {
        Throwable cause = why.getCause();
        String text = why instanceof MqttException e && e.getReasonCode() == MqttException.REASON_CODE_CLIENT_TIMEOUT
                ? "no answer within " + ANSWER_MS / 1000 + " s"
                : String.valueOf(why.getMessage());
        return cause == null || cause == why ? text : text + " (" + cause + ")";
    }

    /** Only takes note: an exception from here, or a wait, would break the line. */
    private final class Told implements MqttCallback {
        @Override
        public void connectionLost(@Nullable Throwable cause) {
            ear.lost("the line broke: " + (cause == null ? "no reason given" : inWords(cause)));
        }

        @Override
        public void messageArrived(String topic, MqttMessage message) {
            ear.heard(topic, message.getPayload(), message.isRetained(), message.isDuplicate());
        }

        @Override
        public void deliveryComplete(IMqttDeliveryToken token) {}
    }
}
