package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever strangers send, and however slowly, the next one is answered. Real sockets, loopback only. */
@Timeout(120) // an exchange that never ends fails; it is no measurement
class WebServerTest {
    private static final WebLimits LIMITS = new WebLimits(16, 3, 1024, 64, 400, 60_000, 400, 4, 1 << 20);

    /** More than the kernel keeps for somebody who does not read. */
    private static final int BIG_BYTES = 32 << 20;

    private final Topics topics = new Topics();
    private final CountDownLatch busy = new CountDownLatch(1);
    private WebServer server = start(LIMITS);

    private WebServer start(WebLimits limits) {
        try {
            InetSocketAddress any = new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
            return WebServer.start(any, limits, this::answer, topics, System::nanoTime);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Response answer(Request request) throws Exception {
        return switch (request.path()) {
            case "/live" -> Response.events();
            case "/fails" -> throw new IllegalStateException("a fault of ours");
            case "/waits" -> {
                busy.await();
                yield Response.json(200, "{}");
            }
            case "/big" -> Response.of(200, "text/plain", ByteBuffer.allocate(BIG_BYTES));
            default -> Response.json(200, "{\"path\":\"" + request.path() + "\",\"body\":\"" + request.body() + "\"}");
        };
    }

    @AfterEach
    void end() {
        busy.countDown();
        server.close();
    }

    private int port() {
        return server.port();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 400",
                "G | 400",
                "get / HTTP/1.1 | 400",
                "GET  / HTTP/1.1 | 400",
                "GET / HTTP/1.1 x | 400",
                "GET http://localhost/ HTTP/1.1 | 400",
                "GET * HTTP/1.1 | 400",
                "GET / HTTP/2.0 | 505",
                "GET / HTTP/1.9 | 400",
                "GET / | 400",
                "GET /ä HTTP/1.1 | 400",
                "AVERYLONGMETHODNAMEINDEED / HTTP/1.1 | 400",
            })
    void aFirstLineThatIsNoneIsRefused(String line, int status) throws IOException {
        assertThat(Wire.status(Wire.exchange(port(), line + "\r\nHost: localhost\r\n\r\n")))
                .isEqualTo(status);
    }

    @Test
    void whatIsNoTextIsRefused() throws IOException {
        assertThat(Wire.status(Wire.exchange(port(), "\u0016\u0003\u0001 hello, TLS")))
                .isEqualTo(400);
        assertThat(Wire.status(Wire.exchange(port(), "GET /\u0000 HTTP/1.1\r\nHost: x\r\n\r\n")))
                .isEqualTo(400);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Host: localhost\\r\\nHost: other | 400",
                "X: y | 400",
                "Host: localhost\\r\\n folded: yes | 400",
                "Host: localhost\\r\\nBad Name: x | 400",
                "Host: localhost\\r\\nNo-colon | 400",
                "Host: localhost\\r\\n: x | 400",
                "Host: localhost\\r\\nX: a\\u0007b | 400",
                "Host: localhost\\nX: y | 400",
                "Host: localhost\\r\\nTransfer-Encoding: chunked | 501",
                "Host: localhost\\r\\nContent-Length: 5, 5 | 400",
                "Host: localhost\\r\\nContent-Length: 5\\r\\nContent-Length: 5 | 400",
                "Host: localhost\\r\\nContent-Length: -1 | 400",
                "Host: localhost\\r\\nContent-Length: 65 | 413",
                "Host: localhost\\r\\nContent-Length: 99999999999999 | 400",
                "Host: localhost\\r\\nExpect: 100-continue | 417",
            })
    void headersThatTwoCouldReadDifferentlyAreRefused(String headers, int status) throws IOException {
        String lines = headers.replace("\\r", "\r").replace("\\n", "\n").replace("\\u0007", "\u0007");
        assertThat(Wire.status(Wire.exchange(port(), "POST / HTTP/1.1\r\n" + lines + "\r\n\r\n")))
                .isEqualTo(status);
    }

    @Test
    void whatIsTooLongIsRefusedBeforeItEnds() throws IOException {
        assertThat(Wire.status(Wire.exchange(port(), "GET /" + "a".repeat(2000))))
                .isEqualTo(414);
        assertThat(Wire.status(Wire.exchange(port(), "GET / HTTP/1.1\r\nX: " + "a".repeat(2000))))
                .isEqualTo(431);
        assertThat(Wire.status(Wire.exchange(port(), "GET /" + "a".repeat(600) + " HTTP/1.1\r\nHost: a\r\n\r\n")))
                .isEqualTo(414);
        assertThat(Wire.status(Wire.exchange(port(), "GET / HTTP/1.1\r\nHost: a\r\n" + "X: y\r\n".repeat(70) + "\r\n")))
                .isEqualTo(431);
    }

    @Test
    void aLineOfBlanksCostsNoTime() throws IOException {
        String blanks = "X: a" + " ".repeat(900) + "\u0001";
        assertThat(Wire.status(Wire.exchange(port(), "GET / HTTP/1.1\r\n" + blanks + "\r\n\r\n")))
                .isEqualTo(400);
    }

    @Test
    void oneLineCarriesManyRequestsAlsoSentAtOnce() throws IOException {
        try (Wire wire = new Wire(port())) {
            wire.say("GET /a HTTP/1.1\r\nHost: x\r\n\r\nPOST /b HTTP/1.1\r\nHost: x\r\nContent-Length: 2\r\n\r\nhi"
                    + "GET /c?really HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
            assertThat(wire.rest())
                    .containsSubsequence("\"path\":\"/a\"", "\"path\":\"/b\",\"body\":\"hi\"", "\"path\":\"/c\"");
        }
    }

    @Test
    void aRequestMayComeByteByByte() throws IOException {
        try (Wire wire = new Wire(port())) {
            for (char c : "GET /slowly HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n".toCharArray()) {
                wire.say(String.valueOf(c));
            }
            assertThat(wire.rest()).contains("\"path\":\"/slowly\"");
        }
    }

    @Test
    void headsComeWithoutBodies() throws IOException {
        String answer = Wire.exchange(port(), "HEAD /a HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
        assertThat(answer).contains("Content-Length: 23").endsWith("\r\n\r\n");
    }

    @Test
    void everyAnswerForbidsWhatThePageDoesNotNeed() throws IOException {
        for (String answer : List.of(Wire.get(port(), "/a"), Wire.exchange(port(), "x\r\n\r\n"))) {
            assertThat(answer)
                    .contains("Content-Security-Policy: default-src 'none'; script-src 'self'")
                    .contains("X-Content-Type-Options: nosniff")
                    .doesNotContain("unsafe");
        }
    }

    @Test
    void aFaultOfOursIsOneRequestsTrouble() throws IOException {
        assertThat(Wire.status(Wire.get(port(), "/fails"))).isEqualTo(500);
        assertThat(Wire.status(Wire.get(port(), "/a"))).isEqualTo(200);
    }

    @Test
    void whoIsSlowToAskIsCutOff() throws IOException {
        try (Wire wire = new Wire(port())) {
            wire.say("GET / HTT");
            assertThat(wire.isEnded()).isTrue();
        }
    }

    @Test
    void whoDoesNotTakeHisAnswerIsCutOff() throws IOException {
        try (Wire wire = new Wire(port())) {
            wire.say("GET /big HTTP/1.1\r\nHost: x\r\n\r\n");
            wire.until("\r\n\r\n"); // the answer has begun, and no more of it is taken
            String other = Wire.get(port(), "/a");
            while (Wire.status(other) == 503) { // while too much lies unsent, nothing more is made
                other = Wire.get(port(), "/a");
            }
            assertThat(Wire.status(other)).isEqualTo(200);
            assertThat(wire.taken()).isLessThan(BIG_BYTES);
        }
    }

    @Test
    void aThousandWhoSayNothingOrHalfDoNotShutTheGrowerOut() throws IOException {
        List<Wire> crowd = new ArrayList<>();
        try {
            for (int i = 0; i < 1000; i++) {
                Wire wire = new Wire(port());
                crowd.add(wire);
                if (i % 2 == 0) {
                    wire.say("GET / HTTP/1.1\r\nHo");
                }
                if (i % 100 == 0) {
                    assertThat(Wire.status(Wire.get(port(), "/a"))).isEqualTo(200);
                }
            }
            assertThat(Wire.status(Wire.get(port(), "/a"))).isEqualTo(200);
        } finally {
            for (Wire wire : crowd) {
                wire.close();
            }
        }
    }

    @Test
    void whatCannotBeAnsweredSoonIsRefusedAtOnce() throws IOException {
        List<Wire> waiting = new ArrayList<>();
        for (int i = 0; i < 2 + LIMITS.waiting(); i++) { // one at work, so many waiting, and one too many
            Wire wire = new Wire(port());
            wire.say("GET /waits HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
            waiting.add(wire);
        }
        await().until(() -> waiting.stream().anyMatch(Wire::isAnswered));
        busy.countDown();
        int refused = 0;
        for (Wire wire : waiting) {
            refused += Wire.status(wire.rest()) == 503 ? 1 : 0;
            wire.close();
        }
        assertThat(refused).isPositive().isLessThan(waiting.size());
        assertThat(Wire.status(Wire.get(port(), "/a"))).isEqualTo(200);
    }

    @Test
    void whoFollowsHearsTheNewestOfEachTopicOnce() throws IOException {
        topics.numbers.get(0).set(7);
        try (Wire wire = new Wire(port())) {
            wire.say("GET /live HTTP/1.1\r\nHost: x\r\n\r\n");
            assertThat(wire.until("topic 0 at 7\n\n"))
                    .contains("text/event-stream")
                    .doesNotContain("topic 1");
            topics.numbers.get(1).set(1);
            assertThat(wire.until("topic 1 at 1\n\n")).doesNotContain("topic 0");
            topics.numbers.get(0).set(9);
            assertThat(wire.until("topic 0 at 9\n\n")).doesNotContain("topic 1");
        }
    }

    @Test
    void onlySoManyFollow() throws IOException {
        topics.numbers.get(0).set(1);
        List<Wire> followers = new ArrayList<>();
        for (int i = 0; i < LIMITS.listeners(); i++) {
            Wire wire = new Wire(port());
            wire.say("GET /live HTTP/1.1\r\nHost: x\r\n\r\n");
            wire.until("topic 0 at 1");
            followers.add(wire);
        }
        assertThat(Wire.status(Wire.exchange(port(), "GET /live HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n")))
                .isEqualTo(503);
        followers.get(0).close();
        await().until(() -> {
            try (Wire next = new Wire(port())) {
                next.say("GET /live HTTP/1.1\r\nHost: x\r\n\r\n");
                return Wire.status(next.until("\r\n")) == 200;
            }
        });
        for (Wire wire : followers) {
            wire.close();
        }
    }

    @Test
    void twoCannotListenOnOnePlace() {
        assertThatThrownBy(() -> WebServer.start(
                        new InetSocketAddress(InetAddress.getLoopbackAddress(), port()),
                        LIMITS,
                        this::answer,
                        topics,
                        System::nanoTime))
                .isInstanceOf(IOException.class);
        server.close();
        server = start(LIMITS);
    }

    /** Two topics, moved by the test. */
    private static final class Topics implements Feed {
        final List<AtomicLong> numbers = List.of(new AtomicLong(), new AtomicLong());

        @Override
        public int topics() {
            return numbers.size();
        }

        @Override
        public long newest(int topic) {
            return numbers.get(topic).get();
        }

        @Override
        public byte[] event(int topic) {
            return ("data: topic " + topic + " at " + newest(topic) + "\n\n").getBytes(UTF_8);
        }
    }
}
