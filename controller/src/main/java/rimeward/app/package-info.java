/** Wiring and command line of the controller. May import everything; imported by none. */
package rimeward.app;
