package rimeward.sim.run;

import rimeward.alert.AlertKind;

/**
 * The grower was told something.
 *
 * @param epochS when, s since 1970 UTC
 * @param kind what about; its title is a headline
 * @param subject which sensor or machine, or the site
 * @param raised raised (true) or cleared
 * @param text what was said
 */
public record AlertEvent(long epochS, AlertKind kind, String subject, boolean raised, String text) {}
