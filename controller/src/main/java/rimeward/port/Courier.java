package rimeward.port;

import rimeward.alert.Alert;

/** Who tells the grower. */
public interface Courier {
    /** Takes an alert that was raised, repeated or cleared. Never blocks and never throws. */
    void tell(Alert alert);

    /** Whether alerts may not reach the grower at present. */
    default boolean isFailing() {
        return false;
    }
}
