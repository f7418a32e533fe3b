package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A bending moment. Immutable.
 */
public final class Moment extends AdditiveQuantity<Moment, Moment> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Moment, Moment> KIND = new Kind<>(
            "moment",
            Kind.Range.ANY,
            Moment::new,
            Units.NEWTON_METRE,
            Units.POUND_FORCE_INCH,
            List.of(Units.NEWTON_METRE, Units.POUND_FORCE_FOOT, Units.POUND_FORCE_INCH));

    @JsonIgnore
    private Moment(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of newton metres.
     *
     * @param number the number of newton metres
     * @return the moment
     * @throws OutOfRangeException if the number is not allowed for a moment
     */
    public static Moment newtonMetres(double number) {
        return KIND.of(number, Units.NEWTON_METRE);
    }

    /**
     * Makes one from a number of pound-force inches.
     *
     * @param number the number of pound-force inches
     * @return the moment
     * @throws OutOfRangeException if the number is not allowed for a moment
     */
    public static Moment poundForceInches(double number) {
        return KIND.of(number, Units.POUND_FORCE_INCH);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the moment
     * @throws OutOfRangeException if the number is not allowed for a moment
     */
    public static Moment of(double number, Unit<Moment> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#NEWTON_METRE}.
     *
     * @param si the SI value
     * @return the moment
     * @throws OutOfRangeException if the value is not allowed for a moment
     */
    public static Moment ofSi(double si) {
        return new Moment(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 120 lbf}
     * @return the moment
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a moment
     */
    @JsonCreator
    public static Moment parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Moment, Moment> kind() {
        return KIND;
    }

    @Override
    Moment make(double si) {
        return new Moment(si);
    }
}
