package rimeward.adapter.mqtt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.order.Answer;
import rimeward.homie.Message;
import rimeward.port.Outbox;

/**
 * What goes on between us and the broker, for as long as the service runs: connect, say everything, say what changes, tell alerts one
 * after the other, and begin anew whenever the line breaks. One thread, the line's, runs it; it knows no clock but the bell's.
 */
final class Conversation {
    private static final Logger LOG = LoggerFactory.getLogger(Conversation.class);

    /** After so long on the line the next break is one by itself, and not another of a row. */
    private static final long STEADY_MS = 30_000;

    /** So long without a line, and alerts may not reach the grower. */
    static final long TOO_LONG_MS = 600_000;

    private static final long LONGEST_WAIT_MS = 60_000;
    private static final int WINDOW = 32;

    private final String broker;
    private final Line.Maker lines;
    private final DeviceTree tree;
    private final Outbox outbox;
    private final Post post;
    private final Bell bell;
    private final Rests rests;
    private final Mail mail = new Mail();
    private long standingMs;
    private long epochMs;
    private String lastWhy = "";
    private boolean up;
    private boolean denied;
    private volatile boolean failing;

    /** @param broker as the log calls it */
    Conversation(String broker, Line.Maker lines, DeviceTree tree, Outbox outbox, Post post, Bell bell, Rests rests) {
        this.broker = broker;
        this.lines = lines;
        this.tree = tree;
        this.outbox = outbox;
        this.post = post;
        this.bell = bell;
        this.rests = rests;
        standingMs = bell.nowMs();
    }

    /** Whether alerts may not reach the grower. From any thread. */
    boolean isFailing() {
        return failing;
    }

    /** Whether everything has been said on a line that stands. For the line's thread. */
    boolean isUp() {
        return up;
    }

    /** Until it is told to stop. */
    void run() throws InterruptedException {
        while (!post.isStopping()) {
            attempt();
            long untilMs = bell.nowMs() + rests.nextMs();
            for (long now = bell.nowMs(); now < untilMs && !post.isStopping(); now = bell.nowMs()) {
                bell.await(untilMs - now);
            }
        }
    }

    private void attempt() throws InterruptedException {
        Line line = lines.make(post.newEar());
        long beganMs = bell.nowMs();
        try {
            speak(line);
        } catch (LineFailed e) {
            broke(String.valueOf(e.getMessage()));
        } catch (RuntimeException | LinkageError e) { // a bug, or a library's: the next line may do better
            LOG.error("The line to {} failed in a way that nobody foresaw", broker, e);
            broke(e.toString());
        } finally {
            line.close();
            if (up && bell.nowMs() - beganMs >= STEADY_MS) {
                rests.beginAnew();
            }
            up = false;
            mail.lineBroke();
            tree.lineBroke();
        }
    }

    private void speak(Line line) throws LineFailed, InterruptedException {
        line.open(tree.will());
        line.listen(tree.subscriptions());
        digest(); // it is to know the newest before it speaks
        line.send(tree.atConnect());
        while (!post.isStopping()) {
            post.check();
            listen(line);
            line.send(digest());
            answer(line);
            if (!up && tree.isReady()) {
                stands();
            }
            if (up) {
                deliver(line);
                tell(line);
            }
            judge();
            line.send(tree.tidy(bell.nowMs()));
            bell.await(Math.min(LONGEST_WAIT_MS, mail.waitMs(bell.nowMs())));
        }
        line.send(tree.atStop());
        line.leave();
    }

    private List<Message> digest() {
        List<Message> messages = new ArrayList<>();
        post.nextPlan().ifPresent(plan -> messages.addAll(tree.planned(plan)));
        post.nextNight().ifPresent(night -> messages.addAll(tree.reckoned(night)));
        post.nextDecided().ifPresent(decided -> {
            epochMs = decided.outcome().frame().tick().wall().epochMs();
            messages.addAll(tree.after(decided));
        });
        return messages;
    }

    private void answer(Line line) throws LineFailed {
        for (Optional<Answer> next = post.nextAnswer(); next.isPresent(); next = post.nextAnswer()) {
            line.send(tree.answered(next.get()));
        }
    }

    /** Only now that somebody may listen. */
    private void tell(Line line) throws LineFailed {
        for (Optional<String> next = post.nextSaid(); next.isPresent(); next = post.nextSaid()) {
            line.send(tree.says(next.get()));
        }
    }

    private void listen(Line line) throws LineFailed {
        for (Optional<Post.Heard> next = post.nextHeard(); next.isPresent(); next = post.nextHeard()) {
            Post.Heard heard = next.get();
            if (mail.isComplete(heard)) {
                arrived();
            }
            line.send(tree.heard(heard, bell.nowMs()));
        }
        long leftOut = post.leftOut();
        if (leftOut > 0) {
            LOG.warn("{} messages came faster than they could be looked at, and were left out", leftOut);
        }
    }

    private void deliver(Line line) throws LineFailed {
        if (mail.isOverdue(bell.nowMs())) {
            denied();
        }
        if (mail.inHand().isEmpty()) {
            post.nextMail(outbox, WINDOW).ifPresent(mail::take);
        }
        if (mail.isDue(bell.nowMs())) {
            List<Message> messages = tree.of(mail.inHand().orElseThrow());
            mail.sending(messages, bell.nowMs());
            line.send(messages);
            if (messages.isEmpty()) { // nothing of it is told on the line
                arrived();
            }
        }
    }

    private void arrived() {
        outbox.sent(mail.inHand().orElseThrow(), epochMs);
        mail.arrived();
        post.news();
        allowed();
    }

    // ---- what is told of the line itself

    private void stands() {
        up = true;
        standingMs = bell.nowMs();
        lastWhy = "";
        LOG.info("speaks to {}", broker);
        judge();
    }

    private void broke(String why) {
        if (up) {
            standingMs = bell.nowMs();
        }
        if (!why.equals(lastWhy)) {
            lastWhy = why;
            LOG.warn("no line to {}: {}. It is tried again and again; alerts wait.", broker, why);
        }
        judge();
    }

    private void denied() {
        if (!denied) {
            denied = true;
            LOG.warn(
                    "{} took an alert and did not pass it on: it may forbid us the topic. Look at its ACL; alerts wait.",
                    broker);
        }
    }

    private void allowed() {
        if (denied) {
            denied = false;
            LOG.info("{} passes alerts on again", broker);
        }
    }

    private void judge() {
        failing = denied || (!up && bell.nowMs() - standingMs >= TOO_LONG_MS);
    }
}
