package rimeward.homie;

import java.util.Locale;

/** The convention's datatypes, as far as a tunnel needs them. */
enum Datatype {
    INTEGER,
    FLOAT,
    BOOLEAN,
    STRING,
    ENUM,
    DATETIME,
    JSON;

    /** As a description has it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
