package rimeward.homie;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rimeward.json.Decimal;

/** The properties' values as they were told last, and what is to be told because they changed. Belongs to the device. */
final class Values {
    private final String base;
    private final List<Node> nodes;
    private final Map<String, Last> last = new HashMap<>();

    private record Last(Shown shown, long atMs) {}

    /** @param base the device's topic */
    Values(String base, List<Node> nodes) {
        this.base = base;
        this.nodes = nodes;
    }

    /** Everything: what has no value is taken away, because an earlier run may have left one. */
    List<Message> all(Look look) {
        last.clear();
        return said(look, true);
    }

    /** What has changed by more than noise. */
    List<Message> changes(Look look) {
        return said(look, false);
    }

    private List<Message> said(Look look, boolean all) {
        long nowMs = look.outcome().frame().tick().elapsedMs();
        List<Message> messages = new ArrayList<>();
        for (Node node : nodes) {
            for (Node.Leaf leaf : node.leaves()) {
                if (leaf.property().retained()) {
                    String topic =
                            base + "/" + node.id() + "/" + leaf.property().id();
                    Shown now = leaf.source().apply(look);
                    Last was = last.get(topic);
                    if (was == null ? all || !(now instanceof Shown.Nothing) : isNews(was, now, nowMs)) {
                        last.put(topic, new Last(now, nowMs));
                        messages.add(message(topic, now));
                    }
                }
            }
        }
        return messages;
    }

    private static boolean isNews(Last was, Shown now, long nowMs) {
        if (was.shown() instanceof Shown.Amount before && now instanceof Shown.Amount number) {
            return StrictMath.abs(number.value() - before.value()) >= number.step();
        }
        if (was.shown() instanceof Shown.Text before && now instanceof Shown.Text text) {
            return !text.key().equals(before.key())
                    || (!text.text().equals(before.text()) && nowMs - was.atMs() >= Shown.SAME_KEY_MS);
        }
        return !was.shown().equals(now);
    }

    private static Message message(String topic, Shown shown) {
        if (shown instanceof Shown.Amount number) {
            return Message.retained(topic, Decimal.of(number.value(), number.decimals()));
        }
        return shown instanceof Shown.Text text ? Message.retained(topic, text.text()) : Message.deleting(topic);
    }
}
