package rimeward.air;

/** Constants of air and water vapour, each with unit and source. "ASHRAE" is Fundamentals 2017, chapter 1. */
public final class AirConstants {

    /** 0 °C in kelvin; exact by definition of the Celsius scale. */
    public static final double ZERO_CELSIUS_K = 273.15;

    /** Pressure of the standard atmosphere at sea level, Pa; exact by definition. */
    public static final double STANDARD_PRESSURE_PA = 101_325.0;

    /** Specific heat of dry air at constant pressure, J/(kg K); ASHRAE eq. 30. */
    public static final double DRY_AIR_HEAT_J_PER_KG_K = 1006.0;

    /** Specific heat of water vapour at constant pressure, J/(kg K); ASHRAE eq. 30. */
    public static final double VAPOUR_HEAT_J_PER_KG_K = 1860.0;

    /** Enthalpy of saturated vapour at 0 °C above liquid water at 0 °C, J/kg; ASHRAE eq. 30. */
    public static final double VAPOUR_ENTHALPY_AT_ZERO_J_PER_KG = 2_501_000.0;

    /** Gas constant of dry air, J/(kg K); ASHRAE eq. 1. */
    public static final double DRY_AIR_GAS_J_PER_KG_K = 287.042;

    /** Gas constant of water vapour, J/(kg K); ASHRAE eq. 2. */
    public static final double VAPOUR_GAS_J_PER_KG_K = 461.524;

    /** Molar mass of water over that of dry air; ASHRAE eq. 20. */
    public static final double VAPOUR_TO_DRY_AIR_MASS = 0.621945;

    private AirConstants() {}
}
