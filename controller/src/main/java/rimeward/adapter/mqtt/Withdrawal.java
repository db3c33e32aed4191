package rimeward.adapter.mqtt;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import rimeward.homie.Message;
import rimeward.homie.Removal;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** Takes a tunnel off its broker for good, over a line of its own. */
public final class Withdrawal {
    private static final long ECHO_S = 10;

    private Withdrawal() {}

    /** What the line hears. */
    private static final class Notes implements Ear {
        private final BlockingQueue<Post.Heard> heard = new LinkedBlockingQueue<>();

        @Override
        public void heard(String topic, byte[] payload, boolean retained, boolean duplicate) {
            heard.add(new Post.Heard(topic, payload, retained, duplicate));
        }

        @Override
        public void lost(String why) {} // whoever waits for an echo or an acknowledgement learns of it
    }

    /**
     * Does it; the service must not run meanwhile.
     *
     * @return how many topics were taken off besides the state
     * @throws IOException when the broker is not there, or does not do it; the message says what to look at, and it may be tried again
     */
    public static int of(Site site, Messaging.Mqtt settings) throws IOException, InterruptedException {
        ScheduledExecutorService watchdog = Executors.newSingleThreadScheduledExecutor();
        Notes notes = new Notes();
        Line line = PahoLine.maker(settings, site.id(), watchdog).make(notes);
        try {
            return withdraw(new Removal(site, settings), line, notes);
        } catch (LineFailed e) {
            throw new IOException("no line to " + settings.inWords() + ": " + e.getMessage(), e);
        } finally {
            line.close();
            watchdog.shutdownNow();
        }
    }

    private static int withdraw(Removal removal, Line line, Notes notes)
            throws LineFailed, IOException, InterruptedException {
        line.open(removal.will());
        line.listen(List.of(removal.filter()));
        line.send(List.of(removal.first()));
        while (!removal.isComplete()) {
            Post.Heard next = notes.heard.poll(ECHO_S, TimeUnit.SECONDS);
            if (next == null) {
                throw new IOException("the broker does not pass on what we say to " + removal.filter()
                        + "; look at its ACL. Nothing but the state was taken off");
            }
            removal.heard(next.topic(), next.payload(), next.retained());
        }
        List<Message> rest = removal.rest();
        line.send(rest);
        line.leave();
        return rest.size();
    }
}
