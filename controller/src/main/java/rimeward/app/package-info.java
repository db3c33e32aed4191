/** Wiring and command line of the controller. May import everything; imported by none. */
@NullMarked
package rimeward.app;

import org.jspecify.annotations.NullMarked;
