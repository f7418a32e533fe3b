package org.ullage.pressure;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/**
 * The pressure of the air at an altitude by the U.S. Standard Atmosphere, 1976, lowest layer: p = p0 (1 - L H / T0)^n.
 *
 * <p>The altitude is taken as geopotential. Taking a surveyed height as one costs less than 0.04 % of the pressure up to 4000 m.
 * The weather moves the real pressure around this value.
 */
public final class StandardAtmosphere {

    private static final String DOCUMENT = "U.S. Standard Atmosphere, 1976 (NOAA, NASA, USAF; NASA-TM-X-74335)";

    /** Where the formula comes from. */
    public static final Source SOURCE =
            Source.secondHand(DOCUMENT, "layer from 0 to 11 km", "public code that cites the document");

    private static final Source TABLE_START = Source.secondHand(
            "ASHRAE Handbook, Fundamentals", "ch. 1 table 1, first row", "public tests of its formulas");

    private static final Constant SEA_LEVEL_PRESSURE = new Constant("p0", 101_325, "Pa", SOURCE);
    private static final Constant SEA_LEVEL_TEMPERATURE = new Constant("T0", 288.15, "K", SOURCE);
    private static final Constant LAPSE_RATE = new Constant("L", 0.0065, "K/m", SOURCE);
    private static final Constant EXPONENT = new Constant(
            "n", 5.255876, "1", Source.computed(DOCUMENT, "g0 M0 / (R* L) with the constants printed there"));

    /** The lowest altitude that is answered for, 500 m below the sea. */
    public static final Length LOWEST = Length.metres(new Constant("H_min", -500, "m", TABLE_START).value());

    /** The highest altitude that is answered for, the top of the lowest layer. */
    public static final Length HIGHEST = Length.metres(new Constant("H_max", 11_000, "m", SOURCE).value());

    private StandardAtmosphere() {}

    /**
     * The pressure of the air at an altitude.
     *
     * @param altitude above sea level, from {@link #LOWEST} to {@link #HIGHEST}
     * @return the absolute pressure
     * @throws OutOfRangeException if the altitude is outside that range
     */
    public static AbsolutePressure at(Length altitude) {
        if (altitude.compareTo(LOWEST) < 0 || altitude.compareTo(HIGHEST) > 0) {
            throw new OutOfRangeException(
                    "altitude",
                    both(altitude),
                    "from " + both(LOWEST) + " to " + both(HIGHEST),
                    "check the number and its unit, or give the absolute pressure of the air instead");
        }
        double warmth = 1 - LAPSE_RATE.value() * altitude.si() / SEA_LEVEL_TEMPERATURE.value();
        return AbsolutePressure.ofSi(SEA_LEVEL_PRESSURE.value() * Math.pow(warmth, EXPONENT.value()));
    }

    private static String both(Length altitude) {
        return altitude.text(Units.METRE) + " (" + altitude.text(Units.FOOT) + ")";
    }
}
