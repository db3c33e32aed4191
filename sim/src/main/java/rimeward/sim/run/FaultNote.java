package rimeward.sim.run;

/**
 * Something the scenario breaks on purpose, for people: the report marks it on its strips and in its log.
 *
 * @param fromEpochS when it begins, s since 1970 UTC
 * @param toEpochS when it ends; the end of the run if it never does
 * @param text one sentence without a full stop: "the heater's fuse is blown"
 */
public record FaultNote(long fromEpochS, long toEpochS, String text) {}
