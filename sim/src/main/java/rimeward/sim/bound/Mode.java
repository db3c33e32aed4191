package rimeward.sim.bound;

/** What else runs beside the heater. One at a time: to dry and to air at once undoes itself. */
enum Mode {
    NOTHING,
    DRYER,
    VENT_FAN
}
