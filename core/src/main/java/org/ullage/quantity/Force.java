package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A force. Immutable.
 */
public final class Force extends AdditiveQuantity<Force, Force> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Force, Force> KIND = new Kind<>(
            "force",
            Kind.Range.ANY,
            Force::new,
            Units.NEWTON,
            Units.POUND_FORCE,
            List.of(Units.NEWTON, Units.KILONEWTON, Units.POUND_FORCE));

    @JsonIgnore
    private Force(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of newtons.
     *
     * @param number the number of newtons
     * @return the force
     * @throws OutOfRangeException if the number is not allowed for a force
     */
    public static Force newtons(double number) {
        return KIND.of(number, Units.NEWTON);
    }

    /**
     * Makes one from a number of pounds-force.
     *
     * @param number the number of pounds-force
     * @return the force
     * @throws OutOfRangeException if the number is not allowed for a force
     */
    public static Force poundsForce(double number) {
        return KIND.of(number, Units.POUND_FORCE);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the force
     * @throws OutOfRangeException if the number is not allowed for a force
     */
    public static Force of(double number, Unit<Force> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#NEWTON}.
     *
     * @param si the SI value
     * @return the force
     * @throws OutOfRangeException if the value is not allowed for a force
     */
    public static Force ofSi(double si) {
        return new Force(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 120 lbf}
     * @return the force
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a force
     */
    @JsonCreator
    public static Force parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Force, Force> kind() {
        return KIND;
    }

    @Override
    Force make(double si) {
        return new Force(si);
    }
}
