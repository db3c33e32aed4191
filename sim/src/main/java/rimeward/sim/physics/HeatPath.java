package rimeward.sim.physics;

/** The ways heat enters the tunnel's lumps, positive inwards. */
public enum HeatPath {
    /** Electricity of the heater. */
    HEATER,
    /** Electricity of the dryer. */
    DRYER,
    SUN,
    /** From outside through the cover. */
    COVER,
    /** By long-wave radiation that passes the cover. */
    SKY,
    /** With air through gaps, door and fan. */
    LEAKAGE,
    GROUND,
    /** Taken by water that evaporates from medium and leaves. */
    EVAPORATION,
    /** Given by vapour that settles on the film. */
    CONDENSATION,
    /** Given by water that freezes on the film. */
    FREEZING,
    /** Given by vapour that the dryer collects, with what freezes on its coil. */
    COLLECTION,
    /** Taken by ice that melts off its coil. */
    DEFROST
}
