package org.ullage.selection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.ullage.quantity.OutOfRangeException;

/**
 * Quantities as whole numbers of units so small that gallons, inches and pounds are exact in them. Values are read through the shortest
 * decimal that a quantity prints, which is what was put in.
 */
final class Exact {

    /** Volumes count in 1e-15 m3, areas in 1e-12 m2, masses in 1e-9 kg, prices in 1e-4 of the currency. */
    static final int VOLUME_DECIMALS = 15;

    static final int AREA_DECIMALS = 12;
    static final int MASS_DECIMALS = 9;
    static final int PRICE_DECIMALS = 4;

    /** What a limit is rounded to, in the caller's favour: 1 mm3, 1 mm2, 1 g. */
    private static final int LIMIT_VOLUME_DECIMALS = 9;

    private static final int LIMIT_AREA_DECIMALS = 6;
    private static final int LIMIT_MASS_DECIMALS = 3;

    /** Leaves room to add up the most vessels there may be without overflow. */
    private static final BigDecimal LARGEST = BigDecimal.valueOf(Long.MAX_VALUE >> Limits.MOST_VESSELS_BITS);

    private Exact() {}

    static long volume(double cubicMetres) {
        return nearest("volume", decimal(cubicMetres), VOLUME_DECIMALS);
    }

    static long area(double squareMetres) {
        return nearest("area", decimal(squareMetres), AREA_DECIMALS);
    }

    static long mass(double kilograms) {
        return nearest("mass", decimal(kilograms), MASS_DECIMALS);
    }

    static long price(BigDecimal price) {
        return nearest("price", price, PRICE_DECIMALS);
    }

    /** A volume that must be reached: a cubic millimetre less is enough. */
    static long requiredVolume(double cubicMetres) {
        return limit("volume", cubicMetres, LIMIT_VOLUME_DECIMALS, VOLUME_DECIMALS, RoundingMode.FLOOR);
    }

    /** An area that must not be passed by more than a square millimetre. */
    static long areaLimit(double squareMetres) {
        return limit("area", squareMetres, LIMIT_AREA_DECIMALS, AREA_DECIMALS, RoundingMode.CEILING);
    }

    /** A mass that must not be passed by more than a gram. */
    static long massLimit(double kilograms) {
        return limit("mass", kilograms, LIMIT_MASS_DECIMALS, MASS_DECIMALS, RoundingMode.CEILING);
    }

    private static long limit(String name, double si, int coarse, int fine, RoundingMode rounding) {
        return nearest(name, decimal(si).setScale(coarse, rounding), fine);
    }

    private static BigDecimal decimal(double si) {
        return new BigDecimal(Double.toString(si));
    }

    private static long nearest(String name, BigDecimal value, int decimals) {
        BigDecimal scaled = value.movePointRight(decimals).setScale(0, RoundingMode.HALF_UP);
        if (scaled.compareTo(LARGEST) > 0) {
            throw new OutOfRangeException(
                    name,
                    value.toString(),
                    "at most " + LARGEST.movePointLeft(decimals).setScale(0, RoundingMode.FLOOR)
                            + " in SI units (a price: in its currency) to be added up exactly",
                    "check the unit");
        }
        return scaled.longValueExact();
    }
}
