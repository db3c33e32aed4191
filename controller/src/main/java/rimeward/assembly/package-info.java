/**
 * Puts the whole service together, between the doors of a tunnel and the grower: control, record, alerts. Used by {@code app} in a
 * real tunnel and by {@code sim.app} in a simulated one. May import {@code core.*}, {@code homie}, {@code port}, {@code service},
 * {@code alert}, {@code record}, {@code adapter.journal}, {@code adapter.mqtt}, {@code adapter.web} and {@code site}.
 */
@NullMarked
package rimeward.assembly;

import org.jspecify.annotations.NullMarked;
