/**
 * The record as an SQLite file; the only importer of JDBC. May import {@code port}, {@code record}, {@code alert}, {@code core}
 * and its children, and {@code site}.
 */
@NullMarked
package rimeward.adapter.journal;

import org.jspecify.annotations.NullMarked;
