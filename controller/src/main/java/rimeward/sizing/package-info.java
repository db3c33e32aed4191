/**
 * What a tunnel loses, what heater and circuit it needs and what a winter costs, worked out from its dimensions before anything is
 * bought. Only computes. May import {@code air}, {@code json} and {@code site}.
 */
@NullMarked
package rimeward.sizing;

import org.jspecify.annotations.NullMarked;
