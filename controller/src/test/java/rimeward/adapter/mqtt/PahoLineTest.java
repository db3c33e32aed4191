package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rimeward.homie.Message;
import rimeward.site.Messaging;

/** Peers that are no brokers: whatever they do, a line comes back and leaves nothing behind. */
class PahoLineTest {
    private static final int TRIES = 200;
    private static final Message WILL = new Message("t", new byte[] {1}, 1, true);

    private final ScheduledExecutorService watchdog = Executors.newSingleThreadScheduledExecutor();

    @AfterEach
    void end() {
        watchdog.shutdownNow();
    }

    @Test
    @Tag("slow")
    void aPeerThatAcceptsAndClosesTwoHundredTimesLeavesNoThread() throws Exception {
        try (ServerSocket peer = listening()) {
            Thread closer = new Thread(() -> closeAll(peer), "peer");
            closer.setDaemon(true);
            closer.start();
            tryOnce(peer.getLocalPort()); // whatever is begun once and stays is begun now
            int before = threads();
            ExecutorService several = Executors.newFixedThreadPool(20);
            List<Future<?>> tries = new ArrayList<>();
            for (int i = 0; i < TRIES; i++) {
                tries.add(several.submit(() -> tryOnce(peer.getLocalPort())));
            }
            for (Future<?> each : tries) {
                each.get();
            }
            several.shutdown();
            await().atMost(Duration.ofSeconds(20))
                    .untilAsserted(() ->
                            assertThat(threads()).as("threads of the library").isLessThanOrEqualTo(before));
        }
    }

    @Test
    @Tag("slow")
    void aPeerThatAcceptsAndNeverAnswersIsGivenUp() throws IOException {
        try (ServerSocket peer = listening()) { // the kernel accepts
            Line line = line(peer.getLocalPort());
            assertThatThrownBy(() -> line.open(WILL))
                    .isInstanceOf(LineFailed.class)
                    .hasMessageMatching("connect: .*(no answer within 15 s|timed out).*");
            line.close();
            await().atMost(Duration.ofSeconds(20))
                    .untilAsserted(() -> assertThat(threads()).isZero());
        }
    }

    @Test
    void aMissingPasswordFileIsToldByName() {
        Messaging.Mqtt settings = new Messaging.Mqtt(
                "127.0.0.1",
                1883,
                new Messaging.Security.Plain(false),
                new Messaging.Login.Password("hallin-rigg", "/no/such/file"),
                "homie",
                List.of(),
                false);
        Line line = PahoLine.maker(settings, "test", watchdog).make(new Deaf());
        assertThatThrownBy(() -> line.open(WILL)).hasMessageContaining("password's file /no/such/file cannot be read");
        line.close();
    }

    @Test
    void messagesTooLongAreSwallowedAndTheNextComesThrough() throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        said.writeBytes(packet(0x32, 10));
        said.writeBytes(packet(0x32, 3_000_000));
        said.writeBytes(packet(0x30, PacketGate.MOST_BYTES));
        said.writeBytes(new byte[] {(byte) 0xd0, 0});
        PacketGate gate = new PacketGate(new ByteArrayInputStream(said.toByteArray()));
        ByteArrayOutputStream expected = new ByteArrayOutputStream();
        expected.writeBytes(packet(0x32, 10));
        expected.writeBytes(packet(0x30, PacketGate.MOST_BYTES));
        expected.writeBytes(new byte[] {(byte) 0xd0, 0});
        assertThat(gate.readAllBytes()).isEqualTo(expected.toByteArray());
    }

    @Test
    void whatIsNotMqttIsRefused() {
        PacketGate gate = new PacketGate(new ByteArrayInputStream(new byte[] {0x30, -1, -1, -1, -1, 0}));
        assertThatThrownBy(gate::readAllBytes).hasMessageContaining("not MQTT");
    }

    /** A head of MQTT 3.1.1, 2.2, and so many bytes. */
    private static byte[] packet(int type, int length) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(type);
        for (int left = length; ; left >>= 7) {
            bytes.write(left > 127 ? (left & 127) | 128 : left);
            if (left <= 127) {
                break;
            }
        }
        bytes.writeBytes("x".repeat(length).getBytes(UTF_8));
        return bytes.toByteArray();
    }

    private static ServerSocket listening() throws IOException {
        return new ServerSocket(0, 250, InetAddress.getLoopbackAddress());
    }

    private static void closeAll(ServerSocket peer) {
        try {
            while (!peer.isClosed()) {
                Socket one = peer.accept();
                one.close();
            }
        } catch (IOException e) {
            assertThat(peer.isClosed()).isTrue();
        }
    }

    private void tryOnce(int port) {
        Line line = line(port);
        assertThatThrownBy(() -> line.open(WILL)).isInstanceOf(LineFailed.class);
        line.close();
    }

    private Line line(int port) {
        Messaging.Mqtt settings = new Messaging.Mqtt(
                InetAddress.getLoopbackAddress().getHostAddress(),
                port,
                new Messaging.Security.Plain(false),
                new Messaging.Login.None(),
                "homie",
                List.of(),
                false);
        return PahoLine.maker(settings, "test", watchdog).make(new Deaf());
    }

    /** Paho names its threads so. */
    private static int threads() {
        return (int) Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().startsWith("MQTT "))
                .count();
    }

    private static final class Deaf implements Ear {
        @Override
        public void heard(String topic, byte[] payload, boolean retained, boolean duplicate) {}

        @Override
        public void lost(String why) {}
    }
}
