package rimeward.port;

import rimeward.record.SavedState;

/** Where control's own state survives a restart and a power cut. */
public interface Keep {
    /** Takes the newest state; it must be on the disk soon, whatever becomes of the power. Never blocks and never throws. */
    void keep(SavedState state);
}
