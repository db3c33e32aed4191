/**
 * The control loop: wait, latch once, step, relays, record, tell. May import {@code core} and its children, {@code port},
 * {@code record}, {@code alert} and {@code site}.
 */
@NullMarked
package rimeward.service;

import org.jspecify.annotations.NullMarked;
