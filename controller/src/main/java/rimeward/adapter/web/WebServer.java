package rimeward.adapter.web;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A small HTTP/1.1 server that holds any number of slow, idle or hostile connections on one thread, within {@link WebLimits}; answers are
 * made on a second one. Nothing of it is ever waited for by anybody else.
 *
 * <p>Why not the JDK's own: it gives each request a thread of its own from the first byte on, so that four half requests stopped a pool of four
 * for good, on 17 and 25 alike, and each live listener would keep one. Its remedies are system properties of the whole process, read once
 * ({@code sun.net.httpserver.maxReqTime}, {@code maxConnections}, …); with those a thousand idle connections shut the grower out instead.
 */
final class WebServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
    private static final long LOOK_MS = 500; // how often it looks for news and for who is late
    private static final long REMIND_MS = 15_000; // so that a listener and all between know the line is up
    private static final long LEAVE_MS = 2_000; // for the other side to read a last answer
    private static final byte[] REMINDER = {':', '\n', '\n'};

    /** Makes answers. On the answering thread; what it throws becomes a 500. */
    interface Answers {
        Response to(Request request) throws Exception;
    }

    private record Made(SelectionKey key, Response response) {}

    private final WebLimits limits;
    private final RequestText text;
    private final Answers answers;
    private final Feed feed;
    private final LongSupplier nanoTime;
    private final ServerSocketChannel door;
    private final Selector selector;
    private final ThreadPoolExecutor maker;
    private final Queue<Made> made = new ConcurrentLinkedQueue<>();
    private final ByteBuffer scratch = ByteBuffer.allocate(16_384);
    private final Thread thread;
    private volatile boolean closed;

    private WebServer(InetSocketAddress at, WebLimits limits, Answers answers, Feed feed, LongSupplier nanoTime)
            throws IOException {
        this.limits = limits;
        this.answers = answers;
        this.feed = feed;
        this.nanoTime = nanoTime;
        text = new RequestText(limits);
        selector = Selector.open();
        door = ServerSocketChannel.open();
        try {
            door.setOption(StandardSocketOptions.SO_REUSEADDR, true);
            door.bind(at, limits.connections());
            door.configureBlocking(false);
            door.register(selector, SelectionKey.OP_ACCEPT);
        } catch (IOException e) {
            door.close();
            selector.close();
            throw e;
        }
        maker = new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new ArrayBlockingQueue<>(limits.waiting()),
                work -> daemon(work, "page-answers"));
        thread = daemon(this::run, "page");
    }

    private static Thread daemon(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Listens from now on.
     *
     * @param nanoTime monotonic time, ns
     * @throws IOException if the address cannot be listened on
     */
    static WebServer start(InetSocketAddress at, WebLimits limits, Answers answers, Feed feed, LongSupplier nanoTime)
            throws IOException {
        WebServer server = new WebServer(at, limits, answers, feed, nanoTime);
        server.thread.start();
        return server;
    }

    int port() {
        return door.socket().getLocalPort();
    }

    private long nowMs() {
        return nanoTime.getAsLong() / 1_000_000;
    }

    private void run() {
        try {
            long lookedMs = nowMs();
            while (!closed) {
                selector.select(selector.keys().size() > 1 ? LOOK_MS : 0); // with nobody there nothing is looked at
                turn();
                if (nowMs() - lookedMs >= LOOK_MS) {
                    lookedMs = nowMs();
                    lookRound();
                }
            }
        } catch (IOException | RuntimeException | Error e) {
            LOG.error("The page is served no more; control goes on", e);
        } finally {
            shut();
        }
    }

    private void turn() throws IOException {
        for (Made each = made.poll(); each != null; each = made.poll()) {
            begin(each);
        }
        var ready = selector.selectedKeys().iterator();
        while (ready.hasNext()) {
            SelectionKey key = ready.next();
            ready.remove();
            if (!key.isValid()) {
                continue;
            }
            if (key.isAcceptable()) {
                accept();
            } else {
                guarded(key, () -> serve(key));
            }
        }
    }

    private interface Step {
        void take() throws IOException;
    }

    /** What goes wrong on one connection ends that one. */
    private void guarded(SelectionKey key, Step step) {
        try {
            step.take();
        } catch (IOException e) {
            drop(key);
        } catch (RuntimeException e) {
            LOG.warn("A request could not be served", e);
            drop(key);
        }
    }

    private static Connection of(SelectionKey key) {
        return (Connection) key.attachment();
    }

    private static void drop(SelectionKey key) {
        key.cancel();
        try {
            key.channel().close();
        } catch (IOException e) {
            LOG.debug("A connection did not close", e);
        }
    }

    // ---- who comes

    private void accept() {
        for (int i = 0; i < limits.connections(); i++) { // then the others have their turn
            try {
                SocketChannel channel = door.accept();
                if (channel == null) {
                    return;
                }
                welcome(channel);
            } catch (IOException e) {
                LOG.debug("A connection was gone before it was taken, or there is no room for it", e);
                return;
            }
        }
    }

    private void welcome(SocketChannel channel) throws IOException {
        try {
            if (connections().size() >= limits.connections()) {
                makeRoom();
            }
            channel.configureBlocking(false);
            channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
            Connection connection = new Connection(channel, limits, feed.topics(), nowMs());
            channel.register(selector, SelectionKey.OP_READ, connection);
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private List<SelectionKey> connections() {
        List<SelectionKey> all = new ArrayList<>();
        for (SelectionKey key : selector.keys()) {
            if (key.isValid() && key.attachment() != null) {
                all.add(key);
            }
        }
        return all;
    }

    /** Who waits for nothing or drips goes first, then who does not take his answer; who follows live goes last. */
    private void makeRoom() {
        connections().stream()
                .min(Comparator.comparing((SelectionKey key) -> of(key).doing())
                        .thenComparingLong(key -> of(key).sinceMs))
                .ifPresent(WebServer::drop);
    }

    // ---- what they say

    private void serve(SelectionKey key) throws IOException {
        Connection connection = of(key);
        if (key.isReadable()) {
            boolean wasIdle = connection.doing() == Connection.Doing.READING && !connection.isAmidRequest();
            if (!connection.read(scratch)) {
                drop(key);
                return;
            }
            if (connection.isEnding()) {
                return;
            }
            if (wasIdle) {
                connection.sinceMs = nowMs(); // from here on the request's time runs
            }
            look(key, connection);
        }
        if (key.isValid() && key.isWritable()) {
            write(key, connection);
        }
    }

    private void look(SelectionKey key, Connection connection) throws IOException {
        if (connection.doing() != Connection.Doing.READING) {
            return;
        }
        Parsed parsed = connection.parsed(text);
        if (parsed instanceof Parsed.Whole whole) {
            hand(key, connection.taken(whole, nowMs()));
            key.interestOps(connection.interest());
        } else if (parsed instanceof Parsed.Bad bad) {
            answer(key, Response.refusal(bad.status(), bad.why()), true);
        }
    }

    private void hand(SelectionKey key, Request request) throws IOException {
        if (unsentBytes() > limits.unsentBytes()) {
            busy(key);
            return;
        }
        try {
            maker.execute(() -> {
                made.add(new Made(key, make(request)));
                selector.wakeup();
            });
        } catch (RejectedExecutionException e) {
            busy(key);
        }
    }

    private void busy(SelectionKey key) throws IOException {
        answer(
                key,
                Response.refusal(503, "Too much is asked at once. Try again.").with("Retry-After", "2"),
                false);
    }

    private long unsentBytes() {
        return connections().stream().mapToLong(key -> of(key).unsentBytes()).sum();
    }

    private Response make(Request request) {
        try {
            return answers.to(request);
        } catch (Exception | LinkageError | StackOverflowError e) {
            LOG.warn("A request could not be answered", e);
            return Response.refusal(500, "That could not be answered; the log says why.");
        }
    }

    // ---- what they are told

    private void begin(Made answer) {
        if (!answer.key().isValid()) {
            return;
        }
        boolean tooMany = answer.response().live() && listeners() >= limits.listeners();
        Response response = tooMany
                ? Response.refusal(503, "Too many follow live already. Try again.")
                        .with("Retry-After", "30")
                : answer.response();
        guarded(answer.key(), () -> answer(answer.key(), response, false));
    }

    private long listeners() {
        return connections().stream()
                .filter(key -> of(key).doing() == Connection.Doing.FOLLOWING)
                .count();
    }

    private void answer(SelectionKey key, Response response, boolean last) throws IOException {
        of(key).answer(response, last, nowMs());
        write(key, of(key));
    }

    private void write(SelectionKey key, Connection connection) throws IOException {
        if (connection.write()) {
            connection.sinceMs = connection.doing() == Connection.Doing.FOLLOWING ? nowMs() : connection.sinceMs;
        }
        if (!connection.hasUnsent()) {
            sent(key, connection);
        }
        if (key.isValid()) {
            key.interestOps(connection.interest());
        }
    }

    private void sent(SelectionKey key, Connection connection) throws IOException {
        if (connection.doing() == Connection.Doing.FOLLOWING) {
            tellNews(key, connection);
        } else if (connection.doing() == Connection.Doing.WRITING && !connection.isEnding()) {
            if (connection.again(nowMs())) {
                look(key, connection);
            } else {
                connection.end(nowMs());
            }
        }
    }

    /** One topic at a time: it is called again once that is sent, or at the next look round. */
    private void tellNews(SelectionKey key, Connection connection) throws IOException {
        for (int topic = 0; topic < feed.topics(); topic++) {
            long newest = feed.newest(topic);
            if (newest > connection.seen[topic]) {
                connection.seen[topic] = newest;
                connection.tell(feed.event(topic), nowMs());
                connection.write();
                key.interestOps(connection.interest());
                if (connection.hasUnsent()) {
                    return;
                }
            }
        }
    }

    // ---- twice a second

    private void lookRound() {
        long nowMs = nowMs();
        for (SelectionKey key : connections()) {
            guarded(key, () -> lookAt(key, of(key), nowMs));
        }
    }

    private void lookAt(SelectionKey key, Connection connection, long nowMs) throws IOException {
        long waitedMs = nowMs - connection.sinceMs;
        if (isOverdue(connection, waitedMs)) {
            drop(key);
        } else if (connection.doing() == Connection.Doing.FOLLOWING && !connection.hasUnsent()) {
            tellNews(key, connection);
            if (!connection.hasUnsent() && nowMs - connection.toldMs >= REMIND_MS) {
                connection.tell(REMINDER, nowMs);
                write(key, connection);
            }
        }
    }

    private boolean isOverdue(Connection connection, long waitedMs) {
        if (connection.isEnding()) {
            return waitedMs >= LEAVE_MS;
        }
        return switch (connection.doing()) {
            case READING -> waitedMs >= (connection.isAmidRequest() ? limits.requestMs() : limits.idleMs());
            case BEING_ANSWERED -> false;
            case WRITING -> waitedMs >= limits.stallMs();
            case FOLLOWING -> connection.hasUnsent() && waitedMs >= limits.stallMs();
        };
    }

    // ---- the end

    private void shut() {
        for (SelectionKey key : selector.keys()) {
            drop(key);
        }
        maker.shutdownNow();
        try {
            door.close();
            selector.close();
        } catch (IOException e) {
            LOG.debug("The page's door did not close", e);
        }
    }

    /** Ends it; who is being answered hears no more. */
    @Override
    public void close() {
        closed = true;
        selector.wakeup();
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
