/**
 * Psychrometrics: saturation pressure over water and over ice, humidity ratio, dew and frost point, enthalpy, wet bulb.
 *
 * <p>Pure functions of doubles, without state, so every thread may call them. Temperatures are °C, pressures Pa, humidity ratios kg of
 * vapour per kg of dry air. Air and vapour are taken as ideal gases; the enhancement factor (about 0.4 % at 1 atm) is left out, as in
 * the perfect-gas relations of ASHRAE Fundamentals ch. 1.
 *
 * <p><b>Relative humidity is over water unless a name says otherwise</b>, as weather services report it (WMO-No. 8).
 *
 * <p>May import: nothing of ours.
 */
@NullMarked
package rimeward.air;

import org.jspecify.annotations.NullMarked;
