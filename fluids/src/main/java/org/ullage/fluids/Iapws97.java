package org.ullage.fluids;

import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/**
 * The two parts of the IAPWS industrial formulation of 1997 that a closed water loop needs, as functions of bare SI numbers:
 * region 1 (liquid water) and region 4 (the saturation line). Nothing is allocated. For quantities with units, and for a check
 * that the water is liquid, use {@link Water#IAPWS_IF97}.
 *
 * <p>Region 1 reaches from {@value #LOWEST_KELVINS} K to {@value #HIGHEST_KELVINS} K and from the vapour pressure to
 * {@value #HIGHEST_PASCALS} Pa. The functions of region 1 here refuse what lies outside those temperatures and above that
 * pressure, but do not compare the pressure with the vapour pressure: just below it they return the value of superheated,
 * metastable liquid, and far below it a number without meaning.
 *
 * <p>Checked against the verification values of the release (Tables 5, 35 and 36) to all nine printed digits. Regions 2, 3 and
 * 5 and the backward equations are not here.
 *
 * @see "IAPWS, R7-97(2012), Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic Properties of Water
 *     and Steam"
 */
public final class Iapws97 {

    /** Lowest temperature of regions 1 and 4, K. */
    public static final double LOWEST_KELVINS = 273.15;

    /** Highest temperature of region 1, K. */
    public static final double HIGHEST_KELVINS = 623.15;

    /** Highest pressure of region 1, Pa absolute. */
    public static final double HIGHEST_PASCALS = 100e6;

    /** Temperature at the critical point of water, where the saturation line ends, K. */
    public static final double CRITICAL_KELVINS = 647.096;

    /** Where equations, coefficients and limits come from. */
    public static final Source SOURCE = Source.secondHand(
            "IAPWS R7-97(2012), Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam",
            "region 1 (Table 2) and region 4 (Table 34)",
            "two independent open-source programs whose digits agree");

    private static final double LOWEST_SATURATION_PASCALS = Iapws97Region4.pressure(LOWEST_KELVINS);
    private static final double HIGHEST_SATURATION_PASCALS = Iapws97Region4.pressure(CRITICAL_KELVINS);

    private Iapws97() {}

    /**
     * Specific volume of liquid water, region 1.
     *
     * @param kelvins temperature, {@value #LOWEST_KELVINS} to {@value #HIGHEST_KELVINS} K
     * @param pascals absolute pressure, above zero to {@value #HIGHEST_PASCALS} Pa; not compared with the vapour pressure
     * @return cubic metres per kilogram, above zero
     * @throws OutOfRangeException if temperature or pressure is outside its range or not a number
     */
    public static double specificVolume(double kelvins, double pascals) {
        requireRegion1(kelvins, pascals);
        return Iapws97Region1.specificVolume(kelvins, pascals);
    }

    /**
     * Specific enthalpy of liquid water, region 1. Its zero is set by the internal energy of saturated liquid at the triple point,
     * which is zero.
     *
     * @param kelvins temperature, {@value #LOWEST_KELVINS} to {@value #HIGHEST_KELVINS} K
     * @param pascals absolute pressure, above zero to {@value #HIGHEST_PASCALS} Pa; not compared with the vapour pressure
     * @return joules per kilogram
     * @throws OutOfRangeException if temperature or pressure is outside its range or not a number
     */
    public static double specificEnthalpy(double kelvins, double pascals) {
        requireRegion1(kelvins, pascals);
        return Iapws97Region1.specificEnthalpy(kelvins, pascals);
    }

    /**
     * Specific heat capacity of liquid water at constant pressure, region 1.
     *
     * @param kelvins temperature, {@value #LOWEST_KELVINS} to {@value #HIGHEST_KELVINS} K
     * @param pascals absolute pressure, above zero to {@value #HIGHEST_PASCALS} Pa; not compared with the vapour pressure
     * @return joules per kilogram and kelvin
     * @throws OutOfRangeException if temperature or pressure is outside its range or not a number
     */
    public static double specificHeatCapacity(double kelvins, double pascals) {
        requireRegion1(kelvins, pascals);
        return Iapws97Region1.specificHeatCapacity(kelvins, pascals);
    }

    /**
     * Pressure at which water of a temperature boils, region 4.
     *
     * @param kelvins temperature, {@value #LOWEST_KELVINS} to {@value #CRITICAL_KELVINS} K
     * @return absolute pressure in pascals, 611.213 Pa to 22.064 MPa
     * @throws OutOfRangeException if the temperature is outside its range or not a number
     */
    public static double saturationPressure(double kelvins) {
        if (!(kelvins >= LOWEST_KELVINS && kelvins <= CRITICAL_KELVINS)) {
            throw WaterRefusal.saturationTemperature(kelvins);
        }
        return Iapws97Region4.pressure(kelvins);
    }

    /**
     * Temperature at which water boils under a pressure, region 4.
     *
     * @param pascals absolute pressure, 611.213 Pa to 22.064 MPa: the saturation pressures at {@value #LOWEST_KELVINS} K and at
     *     {@value #CRITICAL_KELVINS} K
     * @return temperature in kelvins
     * @throws OutOfRangeException if the pressure is outside its range or not a number
     */
    public static double saturationTemperature(double pascals) {
        if (!(pascals >= LOWEST_SATURATION_PASCALS && pascals <= HIGHEST_SATURATION_PASCALS)) {
            throw WaterRefusal.saturationPressure(pascals, LOWEST_SATURATION_PASCALS, HIGHEST_SATURATION_PASCALS);
        }
        return Iapws97Region4.temperature(pascals);
    }

    private static void requireRegion1(double kelvins, double pascals) {
        if (!(kelvins >= LOWEST_KELVINS && kelvins <= HIGHEST_KELVINS)) {
            throw WaterRefusal.temperature(kelvins, LOWEST_KELVINS, HIGHEST_KELVINS, Units.CELSIUS);
        }
        requirePressure(pascals);
    }

    static void requirePressure(double pascals) {
        if (!(pascals > 0 && pascals <= HIGHEST_PASCALS)) {
            throw WaterRefusal.pressure(pascals, HIGHEST_PASCALS);
        }
    }
}
