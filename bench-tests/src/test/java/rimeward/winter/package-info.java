/** Seeded random winters: tunnels, machines, weather and faults nobody thought of, under our law and under foolish ones. */
package rimeward.winter;
