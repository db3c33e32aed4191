/**
 * Paper strips: a time axis, pens, lanes and marks drawn as SVG, for the replay's report and for the page. Pure: the same values give the
 * same text. Times are whole seconds since 1970 UTC. May import nothing of ours.
 */
@NullMarked
package rimeward.strip;

import org.jspecify.annotations.NullMarked;
