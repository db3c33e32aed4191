package rimeward.sim.physics;

/** How a kind of dryer dries; it writes what it does now into its {@link Dryer}. */
sealed interface DryingProcess permits NoDrying, SorptionDrying, CompressorDrying {

    /** Moves to the phase that the contacts and the clock call for. */
    void settle(double elapsedS);

    /** Sets power, conductance and collection for a step from this state. */
    void lay(State now);

    /** The same for a step in which it runs, whatever its phase. */
    void run(State now);

    /** Until its next change of phase by the clock alone, s; infinite if none is due. */
    double untilTimerS(double elapsedS);

    /** Offers its own contacts. */
    void offer(Crossings crossings, State now, State next);

    DryerPhase phase();
}
