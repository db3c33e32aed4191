package rimeward.map.planted.core.judgement;

import java.sql.Connection;

/** Fault: a database outside its adapter. */
public interface OpensDatabase {
    Connection open();
}
