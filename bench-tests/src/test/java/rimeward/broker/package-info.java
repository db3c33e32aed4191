/** Messages through a real Mosquitto, which each test starts for itself on a spare loopback port and treats as badly as a winter would. */
@NullMarked
package rimeward.broker;

import org.jspecify.annotations.NullMarked;
