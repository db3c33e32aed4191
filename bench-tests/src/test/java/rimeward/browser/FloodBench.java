package rimeward.browser;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import rimeward.broker.PacedService;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Page;
import rimeward.winter.RandomWinter;

/**
 * What a flood of connections costs control: a whole service with a simulated tunnel at a fixed pace, looked at in peace, beside connections that
 * send a letter now and then or nothing, and beside whole requests that are nonsense. Measures and asserts nothing; the flood's own memory counts
 * too.
 *
 * <p>Arguments: how many connections, how fast the tunnel's time goes, and for how many seconds to look each time.
 */
final class FloodBench {
    private static final String SLOW = "GET /api/now HTTP/1.1\r\nHost: localhost\r\nX-Slow: " + "a".repeat(400);
    private static final String NONSENSE = "GET /%%% HTTP/9.1\r\nHost: \u007f\r\n\r\n";
    private static final long BETWEEN_LETTERS_MS = 200;

    private final PacedService service;
    private final InetSocketAddress address;
    private final double speed;
    private final int forS;

    private FloodBench(double speed, int forS) throws IOException {
        this.speed = speed;
        service = new PacedService(speed);
        this.forS = forS;
        Path data = Files.createTempDirectory("rimeward-flood-");
        int port;
        try (SocketChannel probe = SocketChannel.open()) {
            port = ((InetSocketAddress) probe.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0))
                            .getLocalAddress())
                    .getPort();
        }
        address = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
        Scenario scenario = new RandomWinter(7, 20).withFaults();
        Thread control =
                new Thread(() -> service.run(scenario, scenario.site().with(Page.onLoopback(port)), data), "control");
        control.setDaemon(true);
        control.start();
    }

    public static void main(String[] args) throws Exception {
        FloodBench bench = new FloodBench(Double.parseDouble(args[1]), Integer.parseInt(args[2]));
        Thread.sleep(10_000); // until it has warmed up
        bench.measure("in peace", () -> {});
        List<SocketChannel> flood = new ArrayList<>();
        bench.measure(
                args[0] + " slow or idle connections, taken up anew when cut",
                () -> bench.drip(flood, Integer.parseInt(args[0])));
        for (SocketChannel each : flood) {
            each.close();
        }
        AtomicLong said = new AtomicLong();
        bench.measure("nonsense, one request after the other", () -> bench.nonsense(said));
        System.out.println("  " + said + " requests of nonsense");
        bench.measure("in peace again", () -> {});
        System.exit(0);
    }

    /** Does that over and over while it looks. */
    private void measure(String what, Step step) throws IOException, InterruptedException {
        long before = service.decisions();
        long beganNs = System.nanoTime();
        while (System.nanoTime() - beganNs < forS * 1_000_000_000L) {
            step.take();
            Thread.sleep(1);
        }
        double lookedS = (System.nanoTime() - beganNs) / 1e9;
        System.gc();
        System.out.println(String.format(
                Locale.ROOT,
                "%s: %.1f of %.1f decisions a second, %.1f MB of heap, %d threads",
                what,
                (service.decisions() - before) / lookedS,
                speed / 5,
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6,
                Thread.activeCount()));
    }

    private void drip(List<SocketChannel> flood, int connections) throws IOException, InterruptedException {
        while (flood.size() < connections) {
            flood.add(connected());
        }
        for (int i = 0; i < flood.size(); i++) {
            try {
                if (i % 2 == 0) {
                    flood.get(i)
                            .write(ByteBuffer.wrap(
                                    SLOW.substring(i % 400, i % 400 + 1).getBytes(US_ASCII)));
                } else if (flood.get(i).read(ByteBuffer.allocate(512)) < 0) {
                    throw new IOException("cut");
                }
            } catch (IOException cut) {
                flood.get(i).close();
                flood.set(i, connected());
            }
        }
        Thread.sleep(BETWEEN_LETTERS_MS);
    }

    private void nonsense(AtomicLong said) throws IOException {
        try (SocketChannel line = SocketChannel.open(address)) {
            line.write(ByteBuffer.wrap(NONSENSE.getBytes(US_ASCII)));
            said.incrementAndGet();
        }
    }

    private SocketChannel connected() throws IOException {
        SocketChannel line = SocketChannel.open(address);
        line.configureBlocking(false);
        return line;
    }

    private interface Step {
        void take() throws IOException, InterruptedException;
    }
}
