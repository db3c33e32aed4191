package rimeward.homie;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;
import rimeward.core.order.Order;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.PastNight;
import rimeward.core.reading.WallTime;
import rimeward.site.Degrees;
import rimeward.site.Messaging;
import rimeward.site.Site;

/**
 * The tunnel as one device of the Homie 5 convention. For one thread, the line's; computes only. It is asked what to send: at connect
 * {@link #atConnect}, after each decision {@link #after} (while there is no line too: then it takes note and has nothing to send), for
 * each alert {@link #of}, and whatever comes in is handed to {@link #heard}, whose messages are to be sent as well.
 *
 * <p>After {@code init} it waits for the echo of that: whatever the broker kept of an earlier run has come before it. Then it
 * describes itself, says all values and is ready.
 */
public final class HomieDevice {
    /** Where no echo comes, because the broker does not let us read, it goes on without after this long, ms. Own choice. */
    private static final long ECHO_MS = 10_000;

    private static final int AT_ONCE = 8; // orders. More than a person gives at once. Own choice, as the next

    private static final long ONE_MORE_MS = 10_000;

    private enum Line {
        AWAY,
        ASKING,
        READY
    }

    private final Site site;
    private final String base;
    private final List<Node> nodes;
    private final Set<String> topics = new LinkedHashSet<>();
    private final Values values;
    private final Incidents incidents;
    private final Commands commands;
    private final Bucket bucket = new Bucket(AT_ONCE, ONE_MORE_MS);
    private final SeldomLog refusals = new SeldomLog();
    private final SeldomLog doubles = new SeldomLog();
    private final Told told;
    private final boolean logs;
    private Line line = Line.AWAY;
    private boolean echoed;
    private boolean restate;
    private long askedAtMs;
    private Optional<Description.Earlier> earlier = Optional.empty();
    private String described = "";
    private @Nullable Look look;

    /** @param version the program's */
    public HomieDevice(Site site, Messaging.Mqtt settings, String version) {
        this.site = site;
        logs = settings.logs();
        base = base(site, settings);
        Set<Messaging.Command> allowed = EnumSet.noneOf(Messaging.Command.class);
        allowed.addAll(settings.commands());
        Degrees degrees = site.degrees();
        nodes = Tree.of(site, degrees, allowed);
        nodes.forEach(node -> node.leaves()
                .forEach(leaf -> topics.add(node.id() + "/" + leaf.property().id())));
        values = new Values(base, nodes);
        incidents = new Incidents(base, site.id());
        commands = new Commands(site, degrees, allowed);
        told = new Told(version);
    }

    /** What the broker says for us when we vanish. */
    public Message will() {
        return Message.retained(state(), "lost");
    }

    /** Filters: orders, and what we said ourselves, whose echo shows that it arrived. To be subscribed before anything is sent. */
    public List<String> subscriptions() {
        List<String> filters = new ArrayList<>(
                List.of(state(), description(), base + Incidents.TEXT + "+", base + Incidents.OBJECT + "+"));
        commands.filters().forEach(filter -> filters.add(base + "/" + filter));
        return filters;
    }

    /** The first thing to say on a line, once subscribed; the rest follows from {@link #heard} or {@link #after}. */
    public List<Message> atConnect() {
        line = Line.ASKING;
        echoed = false;
        restate = false;
        askedAtMs = nowMs();
        incidents.newLine();
        return List.of(Message.retained(state(), "init"));
    }

    /** What a decision has changed. */
    public List<Message> after(Stepped stepped) {
        boolean first = look == null;
        look = new Look(stepped.outcome(), told);
        askedAtMs = first ? nowMs() : askedAtMs;
        return news();
    }

    private List<Message> news() {
        Look now = look;
        if (now == null || line == Line.AWAY) {
            return List.of();
        }
        if (line == Line.ASKING) {
            return echoed || nowMs() - askedAtMs >= ECHO_MS ? introduction(now) : List.of();
        }
        told.standing = incidents.count();
        List<Message> messages = new ArrayList<>(values.changes(now));
        if (restate) {
            restate = false;
            messages.add(Message.retained(state(), "ready"));
        }
        return messages;
    }

    private List<Message> introduction(Look now) {
        line = Line.READY;
        told.standing = incidents.count();
        described = Description.of(site.name(), version(now), nodes);
        List<Message> messages = new ArrayList<>();
        messages.add(Message.retained(description(), described));
        earlier.ifPresent(before -> before.topics().stream()
                .filter(topic -> !topics.contains(topic))
                .forEach(topic -> messages.add(Message.deleting(base + "/" + topic))));
        messages.addAll(values.all(now));
        messages.addAll(incidents.lost());
        messages.add(Message.retained(state(), "ready"));
        return messages;
    }

    /** The one before where nothing changed, else the next. Where the broker kept none, seconds: more than any before it, if the clock is right. */
    private long version(Look now) {
        if (earlier.isPresent()) {
            Description.Earlier before = earlier.get();
            boolean same = Description.of(site.name(), before.version(), nodes).equals(before.text());
            return before.version() + (same ? 0 : 1);
        }
        WallTime wall = now.outcome().frame().tick().wall();
        return wall.trusted() ? Math.max(1, wall.epochMs() / 1000) : 1;
    }

    /**
     * How an alert is told; each of these comes back as an echo.
     *
     * @param number its place in the outbox
     */
    public List<Message> of(long number, Alert alert) {
        told.newestAlert = alert.text();
        return incidents.of(Incident.of(number, alert));
    }

    /** What became of an order that was handed on. */
    public List<Message> answered(Answer answer) {
        told.answer = answer.text();
        if (answer.taken() && answer.order() instanceof Order.Acknowledge acknowledge) {
            told.acknowledged = acknowledge.alertId();
        }
        return line == Line.READY ? news() : List.of();
    }

    /** The newest plan of the coming night; it is shown until its night is over. */
    public List<Message> planned(NightPlan plan) {
        told.plan = plan;
        return line == Line.READY ? news() : List.of();
    }

    /** What the night that is over took. */
    public List<Message> reckoned(PastNight night) {
        told.lastNight = night.inWords(site);
        return line == Line.READY ? news() : List.of();
    }

    /** A line for those who listen now; nothing where that is switched off. */
    public List<Message> log(Level level, String text) {
        return logs && line == Line.READY
                ? List.of(Message.passing(base + "/$log/" + Words.of(level), text))
                : List.of();
    }

    /** How grave a line of the log is, in the convention's words. */
    public enum Level {
        DEBUG,
        INFO,
        WARN,
        ERROR,
        FATAL
    }

    /** What is said before an orderly end. */
    public List<Message> atStop() {
        line = Line.AWAY;
        return List.of(Message.retained(state(), "disconnected"));
    }

    // ---- what comes in

    /**
     * Takes a message of others, or an echo.
     *
     * @param retained whether it is an old one that the broker kept
     * @param duplicate whether it may have come before (MQTT's DUP)
     * @param nowMs monotonic time, ms; any origin
     */
    public Heard heard(String topic, byte[] payload, boolean retained, boolean duplicate, long nowMs) {
        if (topic.equals(state())) {
            return heardState(new String(payload, UTF_8), retained);
        }
        if (topic.equals(description())) {
            return heardDescription(payload, retained, nowMs);
        }
        if (incidents.isOurs(topic)) {
            if (retained) {
                incidents.kept(topic, payload);
            }
            return noted(List.of());
        }
        return topic.startsWith(base + "/") && topic.endsWith("/set")
                ? heardOrder(topic, payload, retained, duplicate, nowMs)
                : noted(List.of());
    }

    /** Lines that wait to be written down. */
    public List<String> linesDue(long nowMs) {
        List<String> lines = new ArrayList<>(refusals.due(nowMs));
        lines.addAll(doubles.due(nowMs));
        return lines;
    }

    private Heard heardState(String says, boolean retained) {
        if (retained) {
            return noted(List.of());
        }
        if (line == Line.ASKING && says.equals("init")) {
            echoed = true;
            return noted(news());
        }
        restate |= line == Line.READY && !says.equals("ready"); // the will of a line that broke may come late
        return noted(List.of());
    }

    private Heard heardDescription(byte[] payload, boolean retained, long nowMs) {
        if (retained) {
            earlier = Description.earlier(payload);
            return noted(List.of());
        }
        boolean ours = Arrays.equals(payload, described.getBytes(UTF_8));
        if (ours || line != Line.READY) {
            return noted(List.of());
        }
        String line = "somebody else describes the device " + base
                + ": two controllers may have the same id in [site]; give each its own";
        return new Heard.Noted(List.of(), doubles.add(line, nowMs));
    }

    private Heard heardOrder(String topic, byte[] payload, boolean retained, boolean duplicate, long nowMs) {
        String property = topic.substring(base.length() + 1, topic.length() - "/set".length());
        try {
            Order order = order(property, payload, retained, duplicate, nowMs);
            String line = "asked by message: " + order;
            return new Heard.Asked(order, List.of(), List.of(line));
        } catch (Misheard e) {
            told.refused++;
            String why = "the order " + Payload.shown(property) + " was refused: " + e.why();
            List<String> lines = refusals.add(why, nowMs);
            told.answer = lines.isEmpty() ? told.answer : why; // a flood of them is not answered one by one
            return new Heard.Refused(why, List.of(), lines);
        }
    }

    private Order order(String property, byte[] payload, boolean retained, boolean duplicate, long nowMs)
            throws Misheard {
        Look now = look;
        if (retained) {
            throw new Misheard("it was sent retained, and would come again after every restart");
        }
        if (duplicate) {
            throw new Misheard("it may have come before");
        }
        if (now == null || line != Line.READY) {
            throw new Misheard("the device is not ready yet");
        }
        Order order =
                commands.read(property, payload, now.outcome().frame().tick().wall());
        if (!bucket.passes(nowMs)) {
            throw new Misheard("orders come faster than one in " + ONE_MORE_MS / 1000 + " s");
        }
        commands.handedOn(order);
        if (order instanceof Order.HandForecast) {
            told.forecast = new String(payload, UTF_8);
        }
        return order;
    }

    /** What all of its topics begin with. */
    static String base(Site site, Messaging.Mqtt settings) {
        return settings.domain() + "/5/" + site.id();
    }

    private static Heard noted(List<Message> messages) {
        return new Heard.Noted(messages, List.of());
    }

    private String state() {
        return base + "/$state";
    }

    private String description() {
        return base + "/$description";
    }

    private long nowMs() {
        Look now = look;
        return now == null ? 0 : now.outcome().frame().tick().elapsedMs();
    }
}
