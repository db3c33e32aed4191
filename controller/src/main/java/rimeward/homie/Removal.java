package rimeward.homie;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rimeward.site.Messaging;
import rimeward.site.Site;

/**
 * Takes a device off its broker for good: its state first, so that nobody takes the rest for a change (Homie 5). What else there is the
 * broker itself tells, so that nothing of an earlier version or of other settings is left.
 */
public final class Removal {
    private final String base;
    private final String state;
    private final Set<String> kept = new LinkedHashSet<>();
    private boolean complete;

    public Removal(Site site, Messaging.Mqtt settings) {
        base = HomieDevice.base(site, settings);
        state = base + "/$state";
    }

    /** What the broker says for us should we vanish half-way. */
    public Message will() {
        return first();
    }

    /** Filter of everything there is of the device; to be subscribed before anything is sent. */
    public String filter() {
        return base + "/#";
    }

    /** The first thing to say. */
    public Message first() {
        return Message.deleting(state);
    }

    /**
     * Takes what the broker says.
     *
     * @param retained whether it is an old one that the broker kept
     */
    public void heard(String topic, byte[] payload, boolean retained) {
        if (retained && !topic.equals(state)) {
            kept.add(topic);
        }
        complete |= !retained && topic.equals(state) && payload.length == 0;
    }

    /** Whether our first words came back: whatever the broker kept has come before them. */
    public boolean isComplete() {
        return complete;
    }

    /** What is to be said then. */
    public List<Message> rest() {
        List<Message> messages = new ArrayList<>();
        kept.forEach(topic -> messages.add(Message.deleting(topic)));
        return messages;
    }
}
