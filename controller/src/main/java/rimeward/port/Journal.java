package rimeward.port;

import java.util.List;
import rimeward.alert.Alert;
import rimeward.core.Stepped;

/** Where outcomes go for the record. */
public interface Journal {
    /** Takes one tick and what the grower is told because of it. Never blocks and never throws. */
    void record(Stepped stepped, List<Alert> alerts);
}
