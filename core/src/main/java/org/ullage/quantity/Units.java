package org.ullage.quantity;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * Every unit of the library with its exact factor. A factor is written as two whole numbers, numerator and denominator of the
 * SI value of one unit, because the definitions (inch, pound, gallon, standard gravity) are exact.
 *
 * <p>Gallon always means the US gallon (231 cubic inches); Btu the International Table Btu; metre and foot of water the
 * conventional ones: water of 1000 kg/m3 under standard gravity.
 */
public final class Units {

    private static final Source SI =
            Source.fromMemory("BIPM, The International System of Units (SI Brochure)", "9th ed., 2019");

    private static final Source SP_811 =
            Source.fromMemory("NIST Special Publication 811, Guide for the Use of the SI", "2008 ed., Appendix B.8");

    /** Standard acceleration of free fall; exact by convention. */
    public static final Constant STANDARD_GRAVITY = new Constant("g_n", 9.80665, "m/s2", SP_811);

    /** Density of the conventional metre and foot of water. */
    public static final Constant CONVENTIONAL_WATER_DENSITY = new Constant("rho_w", 1000, "kg/m3", SP_811);

    /** The standard atmosphere; exact by convention. */
    public static final Constant STANDARD_ATMOSPHERE = new Constant("atm", 101_325, "Pa", SP_811);

    /** Pascal. */
    public static final Unit<Pressure> PASCAL = new Unit<>("Pa", 1, 1, SI);

    /** Kilopascal. */
    public static final Unit<Pressure> KILOPASCAL = new Unit<>("kPa", 1_000, 1, SI);

    /** Megapascal. */
    public static final Unit<Pressure> MEGAPASCAL = new Unit<>("MPa", 1_000_000, 1, SI);

    /** Bar, 100 kPa. */
    public static final Unit<Pressure> BAR = new Unit<>("bar", 100_000, 1, SP_811);

    /** Millibar, 100 Pa. */
    public static final Unit<Pressure> MILLIBAR = new Unit<>("mbar", 100, 1, SP_811);

    /** Pound-force per square inch: 4.4482216152605 N on (0.0254 m) squared. */
    public static final Unit<Pressure> PSI = new Unit<>("psi", 44_482_216_152_605L, 6_451_600_000L, SP_811, "lbf/in2");

    /** Conventional metre of water: 1000 kg/m3 x 9.80665 m/s2 x 1 m. */
    public static final Unit<Pressure> METRE_OF_WATER = new Unit<>("mH2O", 980_665, 100, SP_811, "m H2O", "mwc");

    /** Conventional foot of water: 0.3048 of the conventional metre of water. */
    public static final Unit<Pressure> FOOT_OF_WATER = new Unit<>("ftH2O", 298_906_692L, 100_000, SP_811, "ft H2O");

    /** Kelvin. */
    public static final Unit<Temperature> KELVIN = new Unit<>("K", 1, 1, SI);

    /** Degree Celsius. */
    public static final Unit<Temperature> CELSIUS = new Unit<>("degC", 0, 1, 1, 273.15, SI, "\u00b0C", "C");

    /** Degree Fahrenheit. */
    public static final Unit<Temperature> FAHRENHEIT = new Unit<>("degF", 32, 5, 9, 273.15, SP_811, "\u00b0F", "F");

    /** Degree Rankine. */
    public static final Unit<Temperature> RANKINE = new Unit<>("R", 5, 9, SP_811, "degR", "\u00b0R");

    /** Kelvin, as a difference. */
    public static final Unit<TemperatureDifference> KELVIN_DIFFERENCE = new Unit<>("K", 1, 1, SI);

    /** Celsius degree, as a difference. */
    public static final Unit<TemperatureDifference> CELSIUS_DIFFERENCE = new Unit<>("degC", 1, 1, SI, "\u00b0C", "C");

    /** Fahrenheit degree, as a difference. */
    public static final Unit<TemperatureDifference> FAHRENHEIT_DIFFERENCE =
            new Unit<>("degF", 5, 9, SP_811, "\u00b0F", "F");

    /** Rankine degree, as a difference. */
    public static final Unit<TemperatureDifference> RANKINE_DIFFERENCE =
            new Unit<>("R", 5, 9, SP_811, "degR", "\u00b0R");

    /** Cubic metre. */
    public static final Unit<Volume> CUBIC_METRE = new Unit<>("m3", 1, 1, SI, "m\u00b3");

    /** Litre. */
    public static final Unit<Volume> LITRE = new Unit<>("L", 1, 1_000, SI, "l", "litre", "litres", "liter", "liters");

    /** US gallon, 231 cubic inches. */
    public static final Unit<Volume> US_GALLON =
            new Unit<>("gal", 3_785_411_784L, 1_000_000_000_000L, SP_811, "US gal", "gallon", "gallons");

    /** Cubic foot. */
    public static final Unit<Volume> CUBIC_FOOT =
            new Unit<>("ft3", 28_316_846_592L, 1_000_000_000_000L, SP_811, "ft\u00b3", "cu ft");

    /** Square metre. */
    public static final Unit<Area> SQUARE_METRE = new Unit<>("m2", 1, 1, SI, "m\u00b2");

    /** Square millimetre. */
    public static final Unit<Area> SQUARE_MILLIMETRE = new Unit<>("mm2", 1, 1_000_000, SI, "mm\u00b2");

    /** Square inch. */
    public static final Unit<Area> SQUARE_INCH =
            new Unit<>("in2", 645_160L, 1_000_000_000L, SP_811, "in\u00b2", "sq in");

    /** Square foot. */
    public static final Unit<Area> SQUARE_FOOT =
            new Unit<>("ft2", 9_290_304L, 100_000_000L, SP_811, "ft\u00b2", "sq ft");

    /** Metre. */
    public static final Unit<Length> METRE = new Unit<>("m", 1, 1, SI);

    /** Millimetre. */
    public static final Unit<Length> MILLIMETRE = new Unit<>("mm", 1, 1_000, SI);

    /** Foot. */
    public static final Unit<Length> FOOT = new Unit<>("ft", 3_048, 10_000, SP_811);

    /** Inch. */
    public static final Unit<Length> INCH = new Unit<>("in", 254, 10_000, SP_811);

    /** Kilogram. */
    public static final Unit<Mass> KILOGRAM = new Unit<>("kg", 1, 1, SI);

    /** Gram. */
    public static final Unit<Mass> GRAM = new Unit<>("g", 1, 1_000, SI);

    /** Pound, avoirdupois. */
    public static final Unit<Mass> POUND = new Unit<>("lb", 45_359_237L, 100_000_000L, SP_811);

    /** Kilogram per cubic metre. */
    public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE = new Unit<>("kg/m3", 1, 1, SI, "kg/m\u00b3");

    /** Pound per cubic foot. */
    public static final Unit<Density> POUND_PER_CUBIC_FOOT =
            new Unit<>("lb/ft3", 453_592_370_000L, 28_316_846_592L, SP_811, "lb/ft\u00b3");

    /** Cubic metre per kilogram. */
    public static final Unit<SpecificVolume> CUBIC_METRE_PER_KILOGRAM = new Unit<>("m3/kg", 1, 1, SI, "m\u00b3/kg");

    /** Litre per kilogram. */
    public static final Unit<SpecificVolume> LITRE_PER_KILOGRAM = new Unit<>("L/kg", 1, 1_000, SI);

    /** Cubic foot per pound. */
    public static final Unit<SpecificVolume> CUBIC_FOOT_PER_POUND =
            new Unit<>("ft3/lb", 28_316_846_592L, 453_592_370_000L, SP_811, "ft\u00b3/lb");

    /** Watt. */
    public static final Unit<Power> WATT = new Unit<>("W", 1, 1, SI);

    /** Kilowatt. */
    public static final Unit<Power> KILOWATT = new Unit<>("kW", 1_000, 1, SI);

    /** International Table Btu per hour: 1055.05585262 J in 3600 s. */
    public static final Unit<Power> BTU_PER_HOUR =
            new Unit<>("Btu/h", 105_505_585_262L, 360_000_000_000L, SP_811, "BTU/h", "Btuh");

    /** Newton. */
    public static final Unit<Force> NEWTON = new Unit<>("N", 1, 1, SI);

    /** Kilonewton. */
    public static final Unit<Force> KILONEWTON = new Unit<>("kN", 1_000, 1, SI);

    /** Pound-force: one pound under standard gravity. */
    public static final Unit<Force> POUND_FORCE = new Unit<>("lbf", 44_482_216_152_605L, 10_000_000_000_000L, SP_811);

    /** Newton metre. */
    public static final Unit<Moment> NEWTON_METRE = new Unit<>("N m", 1, 1, SI, "Nm");

    /** Pound-force foot: a pound-force at 0.3048 m. */
    public static final Unit<Moment> POUND_FORCE_FOOT =
            new Unit<>("lbf ft", 3_389_544_870_828_501L, 2_500_000_000_000_000L, SP_811, "ft lbf");

    /** Pound-force inch: a pound-force at 0.0254 m. */
    public static final Unit<Moment> POUND_FORCE_INCH =
            new Unit<>("lbf in", 1_129_848_290_276_167L, 10_000_000_000_000_000L, SP_811, "in lbf");

    /** Pascal, as a stress. */
    public static final Unit<Stress> STRESS_PASCAL = new Unit<>("Pa", 1, 1, SI);

    /** Megapascal, as a stress. */
    public static final Unit<Stress> STRESS_MEGAPASCAL = new Unit<>("MPa", 1_000_000, 1, SI, "N/mm2");

    /** Pound-force per square inch, as a stress. */
    public static final Unit<Stress> STRESS_PSI = new Unit<>("psi", 44_482_216_152_605L, 6_451_600_000L, SP_811);

    /** Thousand pounds-force per square inch, as a stress. */
    public static final Unit<Stress> STRESS_KSI = new Unit<>("ksi", 44_482_216_152_605L, 6_451_600L, SP_811);

    /** Cubic metre, of a section modulus. */
    public static final Unit<SectionModulus> SECTION_CUBIC_METRE = new Unit<>("m3", 1, 1, SI);

    /** Cubic centimetre, of a section modulus. */
    public static final Unit<SectionModulus> SECTION_CUBIC_CENTIMETRE = new Unit<>("cm3", 1, 1_000_000, SI);

    /** Cubic inch, of a section modulus. */
    public static final Unit<SectionModulus> SECTION_CUBIC_INCH =
            new Unit<>("in3", 16_387_064L, 1_000_000_000_000L, SP_811);

    /** Metre to the fourth. */
    public static final Unit<SecondMoment> QUARTIC_METRE = new Unit<>("m4", 1, 1, SI);

    /** Centimetre to the fourth. */
    public static final Unit<SecondMoment> QUARTIC_CENTIMETRE = new Unit<>("cm4", 1, 100_000_000, SI);

    /** Inch to the fourth. */
    public static final Unit<SecondMoment> QUARTIC_INCH =
            new Unit<>("in4", 4_162_314_256L, 10_000_000_000_000_000L, SP_811);

    /** Mass fraction of one. */
    public static final Unit<MassFraction> MASS_FRACTION = new Unit<>("kg/kg", 1, 1, SI);

    /** Percent by mass. */
    public static final Unit<MassFraction> MASS_PERCENT =
            new Unit<>("mass%", 1, 100, SI, "%mass", "% mass", "mass %", "wt%");

    /** Volume fraction of one. */
    public static final Unit<VolumeFraction> VOLUME_FRACTION = new Unit<>("m3/m3", 1, 1, SI, "L/L");

    /** Percent by volume. */
    public static final Unit<VolumeFraction> VOLUME_PERCENT = new Unit<>("vol%", 1, 100, SI, "%vol", "% vol", "vol %");

    /** Reciprocal kelvin. */
    public static final Unit<LinearExpansion> PER_KELVIN = new Unit<>("1/K", 1, 1, SI);

    /** Reciprocal Fahrenheit degree. */
    public static final Unit<LinearExpansion> PER_FAHRENHEIT_DEGREE = new Unit<>("1/degF", 9, 5, SP_811, "1/\u00b0F");

    private Units() {}
}
