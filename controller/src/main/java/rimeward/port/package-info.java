/**
 * The doors to the world. Behind each stands an adapter, a simulated device or a test's fake. May import {@code
 * core.reading}, {@code core.guard}, {@code core.order}, {@code core.outlook}, {@code core}, {@code alert}, {@code record} and {@code site}.
 */
@NullMarked
package rimeward.port;

import org.jspecify.annotations.NullMarked;
