package org.ullage.loop;

import java.io.Serializable;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/**
 * A floor or collector area. Immutable.
 *
 * @param squareMetres the number of square metres, above zero and finite
 */
public record Area(double squareMetres) implements Serializable {

    private static final int DIGITS = 6;

    /**
     * Checks the number.
     *
     * @param squareMetres the number of square metres
     * @throws OutOfRangeException if it is not above zero or not finite
     */
    public Area {
        if (!(squareMetres > 0) || !Double.isFinite(squareMetres)) {
            throw new OutOfRangeException(
                    "area", squareMetres + " m2", "above zero and finite", "check the number and its unit");
        }
    }

    /**
     * Makes one from a number of square metres.
     *
     * @param number the number of square metres
     * @return the area
     * @throws OutOfRangeException if it is not above zero or not finite
     */
    public static Area squareMetres(double number) {
        return new Area(number);
    }

    /**
     * Makes one from a number of square feet.
     *
     * @param number the number of square feet
     * @return the area
     * @throws OutOfRangeException if it is not above zero or not finite
     */
    public static Area squareFeet(double number) {
        // a strip one foot wide, as long as the number; then from feet to metres across
        double stripOfOneFoot = Length.feet(number).si();
        return new Area(Length.feet(stripOfOneFoot).si());
    }

    /**
     * The area in square feet.
     *
     * @return the number
     */
    public double inSquareFeet() {
        return Units.FOOT.numberOf(Units.FOOT.numberOf(squareMetres));
    }

    /**
     * The pipe that lies in a heated floor of this area: area divided by spacing. Runs to the manifold come on top.
     *
     * @param spacing distance from pipe to pipe, above zero
     * @return the length
     * @throws OutOfRangeException if the spacing is zero or negative
     */
    public Length pipeAt(Length spacing) {
        if (spacing.si() <= 0) {
            throw new OutOfRangeException(
                    "pipe spacing",
                    spacing.text(Units.MILLIMETRE) + " (" + spacing.text(Units.INCH) + ")",
                    "above zero",
                    "give the distance from pipe to pipe");
        }
        return Length.ofSi(squareMetres / spacing.si());
    }

    /**
     * The area for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code 120 m2}
     */
    public String text(UnitSystem system) {
        return system == UnitSystem.SI
                ? Digits.significant(squareMetres, DIGITS) + " m2"
                : Digits.significant(inSquareFeet(), DIGITS) + " ft2";
    }
}
