/**
 * The tunnel as a device of the Homie 5 convention: what is published of it, and what may be asked of it. Pure: whoever holds the line
 * to the broker sends and hands in. May import {@code core} and its children, {@code alert}, {@code json}, {@code record} and
 * {@code site}.
 */
@NullMarked
package rimeward.homie;

import org.jspecify.annotations.NullMarked;
