package rimeward.adapter.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.alert.AlertSlot;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.PastNight;
import rimeward.core.tunnel.Lesson;
import rimeward.page.Planned;
import rimeward.port.Past;
import rimeward.record.SavedState;
import rimeward.site.Page;
import rimeward.site.Site;

/** The page while it is served. What it is told it takes note of, from any thread; nobody ever waits for it. */
public final class PageServer implements AutoCloseable {
    private final Newest newest;
    private final WebServer server;
    private final Page.Served page;

    private PageServer(Newest newest, WebServer server, Page.Served page) {
        this.newest = newest;
        this.server = server;
        this.page = page;
    }

    /**
     * What the page is put together from.
     *
     * @param data folder where a token of its own making lies
     * @param past the record, read on the page's own thread
     * @param orders takes what is asked for; must not wait
     * @param says takes a line for the log
     * @param nanoTime monotonic time, ns
     */
    public record Sources(
            Path data,
            Past past,
            Consumer<Order> orders,
            BooleanSupplier recordFailing,
            BooleanSupplier brokerFailing,
            Consumer<String> says,
            LongSupplier nanoTime) {}

    /** @throws IOException if the address cannot be listened on; a token that cannot be read is said, and no order taken then */
    public static PageServer start(Site site, Page.Served page, Sources from) throws IOException {
        return start(site, page, from, WebLimits.usual());
    }

    static PageServer start(Site site, Page.Served page, Sources from, WebLimits limits) throws IOException {
        String version = PageServer.class.getPackage().getImplementationVersion();
        Newest newest = new Newest(
                site,
                from.recordFailing(),
                from.brokerFailing(),
                version == null ? "unknown" : version,
                from.nanoTime());
        Doorman doorman = new Doorman(page, token(page.token(), from));
        PageAnswers answers = new PageAnswers(
                doorman,
                newest,
                new OrderDoor(site, from.orders()),
                new History(site, from.past(), newest.recent()),
                from.nanoTime());
        InetSocketAddress at = new InetSocketAddress(InetAddress.getByName(page.listen()), page.port());
        PageFeed feed = new PageFeed(newest, from.nanoTime());
        return new PageServer(newest, WebServer.start(at, limits, answers, feed, from.nanoTime()), page);
    }

    private static @Nullable Token token(Page.TokenFile where, Sources from) {
        try {
            if (where instanceof Page.TokenFile.Own own) {
                return Token.read(Path.of(own.file()));
            }
            Path file = from.data().resolve(Token.FILE);
            Token token = Token.readOrMake(file, new SecureRandom());
            from.says().accept("the token for orders on the page lies in " + file);
            return token;
        } catch (IOException | RuntimeException e) {
            from.says().accept("the page takes no orders, because its token cannot be used: " + e.getMessage());
            return null;
        }
    }

    /** What to type into a browser. */
    public String address() {
        return page.inWords(server.port());
    }

    public int port() {
        return server.port();
    }

    /** Alerts that stood when an earlier run ended. */
    public void resumes(List<AlertSlot> alerts) {
        newest.alerts().resume(alerts);
    }

    public void decided(Stepped stepped) {
        newest.decided(stepped);
    }

    public void answered(Answer answer) {
        newest.answered(answer);
    }

    public void told(Alert alert) {
        newest.told(alert);
    }

    /** The newest state that was kept. */
    public void kept(SavedState state) {
        newest.kept(state);
    }

    /** A night is over. */
    public void reckoned(PastNight night) {
        newest.reckoned(night);
    }

    /** The newest plan of the coming night; it is shown until its night is over. */
    public void planned(Planned plan) {
        newest.planned(plan);
    }

    /** What the nights teach of the tunnel. */
    public void learned(Lesson lesson) {
        newest.learned(lesson);
    }

    @Override
    public void close() {
        server.close();
    }
}
