/**
 * The line to a broker of MQTT; the only importer of Paho. May import {@code homie}, {@code port}, {@code alert}, {@code core}
 * and its children, {@code record} and {@code site}.
 */
@NullMarked
package rimeward.adapter.mqtt;

import org.jspecify.annotations.NullMarked;
