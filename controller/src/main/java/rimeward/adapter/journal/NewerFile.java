package rimeward.adapter.journal;

import java.sql.SQLException;

/** A record written by a later Rimeward than this. */
final class NewerFile extends SQLException {
    private static final long serialVersionUID = 1;

    NewerFile(int version) {
        super("the record is of version " + version + ", this program knows up to " + Schema.VERSION
                + "; use the newer program, or another file");
    }
}
