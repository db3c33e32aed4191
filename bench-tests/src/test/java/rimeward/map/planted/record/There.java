package rimeward.map.planted.record;

import rimeward.map.planted.port.Back;

/** Fault: one half of a cycle. */
public record There(Back back) {}
