package rimeward.sim.run;

/**
 * Which law ran.
 *
 * @param name as on the command line: "duty", "by-hand"
 * @param says what it does, in a few words
 * @param guarded whether the guard had the last word; rivals run without it, as they would in a tunnel without Rimeward
 */
public record LawLabel(String name, String says, boolean guarded) {}
