package rimeward.sim.physics;

/** What a dryer is doing. */
public enum DryerPhase {
    /** Off, and free to start. */
    IDLE,
    /** Drying. */
    RUNNING,
    /** Only its fan runs, to cool the rotor. */
    RUN_ON,
    /** Melting the ice off its coil. */
    DEFROST,
    /** The compressor rests before it may start again. */
    REST
}
