package rimeward.core.decision;

import rimeward.site.Site;

/**
 * The door for other people's logic: says which machines it would like to run. Whatever it says, the guard has the last
 * word, so a law may be experimental, but it must be pure: the same situation and state always give the same decision. A
 * law in a JAR is found by {@link java.util.ServiceLoader}.
 */
public interface ControlLaw {
    /** Name for tables and the command line: lower-case letters, digits and '-'. */
    String name();

    /** The state before the first tick. */
    LawState start(Site site);

    /** What must survive a restart, in one line; a law that remembers nothing across a restart leaves this as it is. */
    default String remembered(LawState state) {
        return "";
    }

    /** The state after a restart, from what {@link #remembered} said. */
    default LawState resume(Site site, String remembered) {
        return start(site);
    }

    /** One tick. {@code state} is what this law returned the tick before. */
    Decision decide(Situation now, LawState state);
}
