package rimeward.map.planted.port;

import rimeward.map.planted.record.There;

/** The other half. */
public interface Back {
    There there();
}
