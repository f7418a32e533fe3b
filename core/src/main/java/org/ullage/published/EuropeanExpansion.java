package org.ullage.published;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.method.DensityExpansion;
import org.ullage.method.PolynomialExpansion;
import org.ullage.method.TemperatureRange;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.workings.Caution;

/**
 * The European expansion line of water, 0.31 + 3.9e-4 T^2 percent with T in degC: printed in INAIL Raccolta R, and the origin of
 * the tables by temperature that EN 12828 practice uses (every entry from 30 to 130 degC is this line rounded to 0.01 %).
 *
 * <p>Against water from 10 degC it is high below 60 degC (by 60 % at 30 degC) and 2 to 3 % low from 80 to 100 degC.
 */
final class EuropeanExpansion {

    static final Source RACCOLTA_R = Source.secondHand(
            "INAIL, Raccolta R", "2009, R.3.B par. 4.2 and note 14", "a copy of the regulation's text");

    private static final Source COMPARISON =
            Source.computed("IAPWS-IF97", "expansion from 10 degC at 1000 kPa beside the line");

    private static final Source TABLE = Source.published(
            "trade table of expansion by temperature (Belgium)", "30 to 110 degC, to 130 degC from memory");

    private static final Constant CONSTANT = new Constant("c0", 0.0031, "1", RACCOLTA_R);
    private static final Constant LINEAR = new Constant("c1", 0, "1/degC", RACCOLTA_R);
    private static final Constant SQUARE = new Constant("c2", 3.9e-6, "1/degC2", RACCOLTA_R);

    private static final Temperature LOWEST = celsius(new Constant("t_min", 30, "degC", TABLE).value());
    private static final Temperature HIGHEST = celsius(new Constant("t_max", 130, "degC", TABLE).value());
    private static final Temperature FILL = celsius(new Constant("t_fill", 10, "degC", TABLE).value());
    private static final Temperature CROSSING = celsius(new Constant("t_cross", 62, "degC", COMPARISON).value());
    private static final Temperature HALF = celsius(new Constant("t_half", 50, "degC", COMPARISON).value());

    private static final TemperatureRange TEMPERATURES = new TemperatureRange(
            FILL,
            LOWEST,
            HIGHEST,
            List.of(
                    new TemperatureRange.Remark(
                            LOWEST,
                            HALF,
                            new Caution(
                                    "Below 50 degC this expansion line is 9 to 60 % above that of water: the vessel comes out"
                                            + " generous.",
                                    COMPARISON)),
                    new TemperatureRange.Remark(
                            CROSSING,
                            HIGHEST,
                            new Caution(
                                    "Above 62 degC this expansion line is up to 3 % below that of water: take the next larger"
                                            + " vessel without rounding down.",
                                    COMPARISON))),
            TABLE);

    private EuropeanExpansion() {}

    static PolynomialExpansion of(Source source, @Nullable DensityExpansion forMixtures) {
        return new PolynomialExpansion(Units.CELSIUS, CONSTANT, LINEAR, SQUARE, TEMPERATURES, forMixtures, source);
    }

    private static Temperature celsius(double number) {
        return Temperature.celsius(number);
    }
}
