package rimeward.sim.bound;

import java.util.function.Function;

/** One quarter of an hour thrice from the same beginning: with nothing, the dryer, and the vent fan beside the heater. */
record Modes(Quarter nothing, Quarter dryer, Quarter fan) {

    /** @param dried called when the dryer has run */
    static Modes of(Function<Mode, Quarter> run, Runnable dried) {
        Quarter dryer = run.apply(Mode.DRYER);
        dried.run();
        return new Modes(run.apply(Mode.NOTHING), dryer, run.apply(Mode.VENT_FAN));
    }

    Quarter of(Mode mode) {
        return switch (mode) {
            case NOTHING -> nothing;
            case DRYER -> dryer;
            case VENT_FAN -> fan;
        };
    }
}
