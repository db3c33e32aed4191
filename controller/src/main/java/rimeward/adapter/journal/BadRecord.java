package rimeward.adapter.journal;

import java.nio.file.Path;

/** A record, or its export, cannot be used. The message says what, where and what to do. */
public final class BadRecord extends RuntimeException {
    private static final long serialVersionUID = 1;

    BadRecord(Path file, String what, String remedy) {
        super(file + ": " + what + "; " + remedy);
    }

    BadRecord(Path file, int line, String what, String remedy) {
        super(file + ":" + line + ": " + what + "; " + remedy);
    }
}
