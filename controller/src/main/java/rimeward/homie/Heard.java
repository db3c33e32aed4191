package rimeward.homie;

import java.util.List;
import rimeward.core.order.Order;

/** What came of a message that was heard. The lines are for a log; they are few, however many messages come. */
public sealed interface Heard {
    /** What is to be sent because of it. */
    List<Message> messages();

    /** What is to be written down because of it. */
    List<String> lines();

    /** No command. */
    record Noted(List<Message> messages, List<String> lines) implements Heard {}

    /** A command that may be handed on; what becomes of it comes back by {@link HomieDevice#answered}. */
    record Asked(Order order, List<Message> messages, List<String> lines) implements Heard {}

    /** A command that goes no further. */
    record Refused(String why, List<Message> messages, List<String> lines) implements Heard {}
}
