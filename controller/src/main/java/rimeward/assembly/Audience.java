package rimeward.assembly;

import rimeward.alert.Alert;
import rimeward.core.Stepped;
import rimeward.core.order.Answer;

/** Who reads along while the service runs: a log, or somebody at a screen. */
public interface Audience {
    /** What the service says of itself. */
    void says(String line);

    /** After each decision, on the loop's thread. */
    void decided(Stepped stepped);

    /** What became of an order, on the loop's thread. */
    void answered(Answer answer);

    /** An alert that is in the record by now, or cannot be recorded. On the record's own thread. */
    void told(Alert alert);
}
