package rimeward.adapter.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Locale;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import rimeward.page.NowJson;

/** What the page's listeners are told. It looks at what was handed over, and so nobody who hands over need ring. For the server's thread. */
final class PageFeed implements Feed {
    /** Topics, and what the events are called. */
    enum Topic {
        NOW,
        PLAN,
        NIGHTS
    }

    private static final Topic[] TOPICS = Topic.values();
    private static final long AT_MOST_EVERY_MS = 1000;

    private final Newest newest;
    private final LongSupplier nanoTime;
    private final @Nullable Object[] marks = new Object[TOPICS.length];
    private final long[] numbers = new long[TOPICS.length];
    private final long[] changedMs = new long[TOPICS.length];
    private long shownNumber = -1;
    private byte[] shown = {};

    PageFeed(Newest newest, LongSupplier nanoTime) {
        this.newest = newest;
        this.nanoTime = nanoTime;
    }

    @Override
    public int topics() {
        return TOPICS.length;
    }

    @Override
    public long newest(int topic) {
        Object mark = newest.mark(TOPICS[topic]);
        long nowMs = nanoTime.getAsLong() / 1_000_000;
        boolean due = numbers[topic] == 0 || nowMs - changedMs[topic] >= AT_MOST_EVERY_MS;
        if (mark != marks[topic] && due) {
            marks[topic] = mark;
            changedMs[topic] = nowMs;
            numbers[topic]++;
        }
        return numbers[topic];
    }

    @Override
    public byte[] event(int topic) {
        if (TOPICS[topic] != Topic.NOW) {
            return event(TOPICS[topic], "{}");
        }
        if (shownNumber != numbers[topic]) { // one text for all who listen
            shownNumber = numbers[topic];
            shown = event(Topic.NOW, newest.sight().map(NowJson::of).orElse("{}"));
        }
        return shown;
    }

    private static byte[] event(Topic topic, String data) {
        String name = topic.name().toLowerCase(Locale.ROOT);
        return ("event: " + name + "\ndata: " + data + "\n\n").getBytes(UTF_8);
    }
}
