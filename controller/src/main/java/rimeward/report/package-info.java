/**
 * What the reports of a replay and of a night are made of beside the strip: paper, legend, log, and how numbers are said. May import {@code
 * strip}.
 */
@NullMarked
package rimeward.report;

import org.jspecify.annotations.NullMarked;
