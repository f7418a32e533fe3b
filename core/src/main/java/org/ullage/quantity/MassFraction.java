package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * The part of a mixture's mass that one component has, from 0 % to 100 %. Not a volume fraction: the conversion needs a stated
 * definition. Immutable.
 */
public final class MassFraction extends Quantity<MassFraction, MassFraction> {

    private static final long serialVersionUID = 1L;

    private static final Kind<MassFraction, MassFraction> KIND = new Kind<>(
            "mass fraction",
            Kind.Range.FRACTION,
            MassFraction::new,
            Units.MASS_PERCENT,
            Units.MASS_PERCENT,
            List.of(Units.MASS_FRACTION, Units.MASS_PERCENT));

    @JsonIgnore
    private MassFraction(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of percent by mass.
     *
     * @param number the number of percent by mass
     * @return the mass fraction
     * @throws OutOfRangeException if the number is not allowed for a mass fraction
     */
    public static MassFraction percent(double number) {
        return KIND.of(number, Units.MASS_PERCENT);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the mass fraction
     * @throws OutOfRangeException if the number is not allowed for a mass fraction
     */
    public static MassFraction of(double number, Unit<MassFraction> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#MASS_FRACTION}.
     *
     * @param si the SI value
     * @return the mass fraction
     * @throws OutOfRangeException if the value is not allowed for a mass fraction
     */
    public static MassFraction ofSi(double si) {
        return new MassFraction(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 40 mass%}
     * @return the mass fraction
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a mass fraction
     */
    @JsonCreator
    public static MassFraction parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<MassFraction, MassFraction> kind() {
        return KIND;
    }
}
