/**
 * Off the tick: what is learned each morning, the plan of the night, and the reckoning when it is over. It only tells; of all this control
 * takes the learned tunnel and the outlook, and only as far as it believes them. For a thread of its own that may wait for the disk. May
 * import {@code core} and its children, {@code port}, {@code record}, {@code air} and {@code site}.
 */
@NullMarked
package rimeward.planning;

import org.jspecify.annotations.NullMarked;
