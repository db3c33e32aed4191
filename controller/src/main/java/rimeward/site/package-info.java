/**
 * What is installed and its limits: plants, floor, sensors, machines, circuit, tariff. Validated values only: a {@link
 * rimeward.site.Site} that exists is one the controller can run. May import nothing of ours.
 */
@NullMarked
package rimeward.site;

import org.jspecify.annotations.NullMarked;
