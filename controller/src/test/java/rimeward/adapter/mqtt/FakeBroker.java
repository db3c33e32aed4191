package rimeward.adapter.mqtt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rimeward.homie.Message;

/** A broker in a few lines: keeps what is retained, echoes to whoever listens, and fails in the ways that real ones do. */
final class FakeBroker implements Line.Maker {
    /** How it behaves. */
    enum Mood {
        WELL,
        REFUSES,
        /** Accepts, and never answers. */
        FROZEN,
        /** Acknowledges alerts, and passes none on. */
        DENIES_ALERTS,
        /** Breaks the line at the next alert, before anybody gets it. */
        CUTS_ALERTS
    }

    final List<String> log = new ArrayList<>();
    final Map<String, String> retained = new TreeMap<>();
    Mood mood = Mood.WELL;
    int lines;
    int open;
    private final FakeBell bell;
    private @Nullable Ear ear;

    FakeBroker(FakeBell bell) {
        this.bell = bell;
    }

    /** As others would publish. */
    void says(String topic, String payload, boolean old) {
        if (ear != null) {
            ear.heard(topic, payload.getBytes(UTF_8), old, false);
        }
    }

    void dies() {
        mood = Mood.REFUSES;
        if (ear != null) {
            ear.lost("connection reset");
        }
    }

    @Override
    public Line make(Ear mine) {
        lines++;
        open++;
        return new Line() {
            private Message last = new Message("", new byte[0], 0, false);

            @Override
            public void open(Message will) throws LineFailed {
                last = will;
                if (mood == Mood.FROZEN) {
                    bell.pass(PahoLine.ANSWER_MS);
                    throw new LineFailed("connect: no answer");
                }
                if (mood == Mood.REFUSES) {
                    throw new LineFailed("connect: refused");
                }
                ear = mine;
            }

            @Override
            public void listen(List<String> filters) throws LineFailed {
                answer();
                filters.forEach(filter -> log.add("listen " + filter));
            }

            @Override
            public void send(List<Message> messages) throws LineFailed {
                for (Message each : messages) {
                    boolean alert = each.topic().contains("$alert");
                    answer();
                    if (alert && mood == Mood.CUTS_ALERTS) {
                        throw new LineFailed("publish: the line broke");
                    }
                    if (alert && mood == Mood.DENIES_ALERTS) {
                        continue;
                    }
                    log.add(each.topic() + "=" + each.text());
                    retained.put(each.topic(), each.text());
                    if (alert) {
                        mine.heard(each.topic(), each.payload(), false, false);
                    }
                }
            }

            private void answer() throws LineFailed {
                if (mood == Mood.REFUSES || mood == Mood.FROZEN) {
                    bell.pass(mood == Mood.FROZEN ? PahoLine.ANSWER_MS : 0);
                    throw new LineFailed("no answer");
                }
            }

            @Override
            public void leave() {
                last = new Message("", new byte[0], 0, false);
            }

            @Override
            public void close() {
                open--;
                if (ear == mine) {
                    ear = null;
                    if (!last.topic().isEmpty()) {
                        retained.put(last.topic(), last.text());
                    }
                }
            }
        };
    }
}
