package rimeward.sim.physics;

/** What flows during one step, W and kg/s: these numbers move the states, and the same numbers are booked. For one thread. */
final class Flows {
    double heaterW;
    double dryerW;
    double elementToAirW;
    double dryerToAirW;
    double airToFilmW;
    double airToMassW;
    double massToFilmW;
    double leakW;
    double groundW;
    double skyW;
    double coverW;
    double sunToAirW;
    double sunToMassW;
    double evaporationW;
    double condensationW;
    double freezingW;
    double collectionW;
    double meltW;
    double evaporationKgPerS;
    double condensationKgPerS;
    double freezingKgPerS;
    double collectionKgPerS;
    double coilFreezingKgPerS;
    double coilMeltKgPerS;
    double leakKgPerS;
    /** Of what the film gives or takes, the part that is frost. */
    double frostShare;
}
