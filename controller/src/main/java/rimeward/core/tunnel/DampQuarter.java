package rimeward.core.tunnel;

/**
 * A quarter of an hour's damp, inside and outside.
 *
 * @param epochS when it began, s since 1970 UTC
 * @param airC mean inside, °C
 * @param humidityKgPerKg mean humidity ratio inside, kg/kg
 * @param outsideKgPerKg the same outside
 * @param dryerShare part of the time that the dryer ran, 0 to 1
 * @param dark whether there was no sun for sure
 * @param shut whether neither door nor vent fan let outside air in
 */
public record DampQuarter(
        long epochS,
        double airC,
        double humidityKgPerKg,
        double outsideKgPerKg,
        double dryerShare,
        boolean dark,
        boolean shut) {}
