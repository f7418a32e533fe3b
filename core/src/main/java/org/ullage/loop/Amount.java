package org.ullage.loop;

import java.io.Serializable;
import org.ullage.quantity.Area;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * How much of something a line of a list counts: pieces, a length, an output, an area. Immutable.
 *
 * @param metric the number in the metric unit
 * @param metricUnit the metric unit, empty for pieces
 * @param inchPound the number in the inch-pound unit
 * @param inchPoundUnit the inch-pound unit, empty for pieces
 */
public record Amount(double metric, String metricUnit, double inchPound, String inchPoundUnit) implements Serializable {

    private static final int DIGITS = 6;

    /**
     * A number of pieces.
     *
     * @param pieces 1 or more
     * @return the amount
     * @throws OutOfRangeException if there is no piece
     */
    public static Amount of(int pieces) {
        if (pieces < 1) {
            throw new OutOfRangeException(
                    "count", Integer.toString(pieces), "1 or more", "leave the line out if there is no such item");
        }
        return new Amount(pieces, "", pieces, "");
    }

    /**
     * A length.
     *
     * @param length in either system
     * @return the amount, in metres or feet
     */
    public static Amount of(Length length) {
        return new Amount(length.in(Units.METRE), "m", length.in(Units.FOOT), "ft");
    }

    /**
     * A heat output.
     *
     * @param output above zero
     * @return the amount, in kW or 1000 Btu/h
     * @throws OutOfRangeException if the output is zero or negative
     */
    public static Amount of(Power output) {
        if (output.si() <= 0) {
            throw new OutOfRangeException(
                    "output", output.textInBothSystems(), "above zero", "give the rated heat output");
        }
        return new Amount(output.in(Units.KILOWATT), "kW", output.in(Units.BTU_PER_HOUR) / 1000, "kBtu/h");
    }

    /**
     * An area.
     *
     * @param area in either system
     * @return the amount, in square metres or square feet
     */
    public static Amount of(Area area) {
        return new Amount(area.in(Units.SQUARE_METRE), "m2", area.in(Units.SQUARE_FOOT), "ft2");
    }

    /**
     * A rating in square feet of equivalent direct radiation, which is the same number in both systems.
     *
     * @param squareFeetEdr above zero
     * @return the amount
     * @throws OutOfRangeException if the rating is not above zero
     */
    public static Amount ofRadiation(double squareFeetEdr) {
        if (!(squareFeetEdr > 0) || !Double.isFinite(squareFeetEdr)) {
            throw new OutOfRangeException(
                    "radiation", squareFeetEdr + " ft2 EDR", "above zero and finite", "give the radiator's rating");
        }
        return new Amount(squareFeetEdr, "ft2 EDR", squareFeetEdr, "ft2 EDR");
    }

    /**
     * The amount for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code 120 m} or {@code 3}
     */
    public String text(UnitSystem system) {
        String text = Digits.significant(number(system), DIGITS);
        return unit(system).isEmpty() ? text : text + " " + unit(system);
    }

    /**
     * What one unit of the amount holds, for people.
     *
     * @param whole the volume of the whole amount
     * @param system metric or inch-pound
     * @param digits significant digits
     * @return such as {@code 0.3142 L/m} or, for pieces, {@code 5.7 L}
     */
    public String each(Volume whole, UnitSystem system, int digits) {
        if (number(system) == 0) {
            return "";
        }
        String each = Volume.ofSi(whole.si() / number(system)).text(system, digits);
        String unit = unit(system);
        if (unit.isEmpty()) {
            return each;
        }
        return each + "/" + (unit.contains("/") || unit.contains(" ") ? "(" + unit + ")" : unit);
    }

    private double number(UnitSystem system) {
        return system == UnitSystem.SI ? metric : inchPound;
    }

    private String unit(UnitSystem system) {
        return system == UnitSystem.SI ? metricUnit : inchPoundUnit;
    }
}
