package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * An area: floor, collector, footprint or section. Immutable.
 */
public final class Area extends AdditiveQuantity<Area, Area> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Area, Area> KIND = new Kind<>(
            "area",
            Kind.Range.POSITIVE,
            Area::new,
            Units.SQUARE_METRE,
            Units.SQUARE_FOOT,
            List.of(Units.SQUARE_METRE, Units.SQUARE_MILLIMETRE, Units.SQUARE_INCH, Units.SQUARE_FOOT));

    @JsonIgnore
    private Area(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of square metres.
     *
     * @param number the number of square metres
     * @return the area
     * @throws OutOfRangeException if the number is not allowed for an area
     */
    public static Area squareMetres(double number) {
        return KIND.of(number, Units.SQUARE_METRE);
    }

    /**
     * Makes one from a number of square feet.
     *
     * @param number the number of square feet
     * @return the area
     * @throws OutOfRangeException if the number is not allowed for an area
     */
    public static Area squareFeet(double number) {
        return KIND.of(number, Units.SQUARE_FOOT);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the area
     * @throws OutOfRangeException if the number is not allowed for an area
     */
    public static Area of(double number, Unit<Area> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#SQUARE_METRE}.
     *
     * @param si the SI value
     * @return the area
     * @throws OutOfRangeException if the value is not allowed for an area
     */
    public static Area ofSi(double si) {
        return new Area(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 120 lbf}
     * @return the area
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for an area
     */
    @JsonCreator
    public static Area parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Area, Area> kind() {
        return KIND;
    }

    @Override
    Area make(double si) {
        return new Area(si);
    }
}
