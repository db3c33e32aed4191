package rimeward.port;

import java.util.List;
import rimeward.alert.Alert;
import rimeward.core.Stepped;

/** Where outcomes go for the record. */
public interface Journal {
    /** Takes one tick and what the grower is told because of it. Never blocks and never throws. */
    void record(Stepped stepped, List<Alert> alerts);

    /** Whether nothing can be written at present. */
    default boolean isFailing() {
        return false;
    }

    /** How often since the start the record was found damaged, and begun anew. */
    default int timesSetAside() {
        return 0;
    }
}
