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

    /** One tick. {@code state} is what this law returned the tick before. */
    Decision decide(Situation now, LawState state);
}
