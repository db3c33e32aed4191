/**
 * Real sensors and relays: the only importer of Pi4J, and the kernel's own sensor files. May import {@code port}, {@code
 * core.reading}, {@code core.guard} and {@code site}.
 */
@NullMarked
package rimeward.adapter.pi;

import org.jspecify.annotations.NullMarked;
