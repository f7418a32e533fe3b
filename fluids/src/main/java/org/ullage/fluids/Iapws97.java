package org.ullage.fluids;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/**
 * The two parts of the IAPWS industrial formulation of 1997 that a closed water loop needs, as functions of bare SI numbers:
 * region 1 (liquid water) and region 4 (the saturation line). Nothing is allocated. For quantities with units, and for a check
 * that the water is liquid, use {@link Water#IAPWS_IF97}.
 *
 * <p>Region 1 reaches from 273.15 K to 623.15 K and from the vapour pressure to
 * 100 MPa. The functions of region 1 here refuse what lies outside those temperatures and above that
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

    /** Where equations, coefficients and limits come from. */
    public static final Source SOURCE = Source.secondHand(
            "IAPWS R7-97(2012), Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam",
            "region 1 (Table 2) and region 4 (Table 34)",
            "two independent open-source programs whose digits agree");

    /** Lowest temperature of regions 1 and 4. */
    public static final Constant LOWEST_TEMPERATURE = new Constant("T_min", 273.15, "K", SOURCE);

    /** Highest temperature of region 1. */
    public static final Constant HIGHEST_TEMPERATURE = new Constant("T_max", 623.15, "K", SOURCE);

    /** Highest pressure of region 1, absolute. */
    public static final Constant HIGHEST_PRESSURE = new Constant("p_max", 100e6, "Pa", SOURCE);

    /** Temperature at the critical point of water, where the saturation line ends. */
    public static final Constant CRITICAL_TEMPERATURE = new Constant("T_c", 647.096, "K", SOURCE);

    private static final double LOWEST_KELVINS = LOWEST_TEMPERATURE.value();
    private static final double HIGHEST_KELVINS = HIGHEST_TEMPERATURE.value();
    private static final double HIGHEST_PASCALS = HIGHEST_PRESSURE.value();
    private static final double CRITICAL_KELVINS = CRITICAL_TEMPERATURE.value();

    private Iapws97() {}

    /**
     * Specific volume of liquid water, region 1.
     *
     * @param kelvins temperature, 273.15 to 623.15 K
     * @param pascals absolute pressure, above zero to 100 MPa; not compared with the vapour pressure
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
     * @param kelvins temperature, 273.15 to 623.15 K
     * @param pascals absolute pressure, above zero to 100 MPa; not compared with the vapour pressure
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
     * @param kelvins temperature, 273.15 to 623.15 K
     * @param pascals absolute pressure, above zero to 100 MPa; not compared with the vapour pressure
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
     * @param kelvins temperature, 273.15 to 647.096 K
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
     * @param pascals absolute pressure, 611.213 Pa to 22.064 MPa: the saturation pressures at 273.15 K and at
     *     647.096 K
     * @return temperature in kelvins
     * @throws OutOfRangeException if the pressure is outside its range or not a number
     */
    public static double saturationTemperature(double pascals) {
        if (!(pascals >= Iapws97Region4.LOWEST_PRESSURE && pascals <= Iapws97Region4.HIGHEST_PRESSURE)) {
            throw WaterRefusal.saturationPressure(pascals);
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
            throw WaterRefusal.pressure(pascals);
        }
    }
}
