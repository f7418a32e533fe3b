package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A stress in a material. Not a pressure of a fluid: the two do not mix. Immutable.
 */
public final class Stress extends AdditiveQuantity<Stress, Stress> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Stress, Stress> KIND = new Kind<>(
            "stress",
            Kind.Range.ANY,
            Stress::new,
            Units.STRESS_MEGAPASCAL,
            Units.STRESS_PSI,
            List.of(Units.STRESS_PASCAL, Units.STRESS_MEGAPASCAL, Units.STRESS_PSI, Units.STRESS_KSI));

    @JsonIgnore
    private Stress(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of megapascals.
     *
     * @param number the number of megapascals
     * @return the stress
     * @throws OutOfRangeException if the number is not allowed for a stress
     */
    public static Stress megapascals(double number) {
        return KIND.of(number, Units.STRESS_MEGAPASCAL);
    }

    /**
     * Makes one from a number of pounds-force per square inch.
     *
     * @param number the number of pounds-force per square inch
     * @return the stress
     * @throws OutOfRangeException if the number is not allowed for a stress
     */
    public static Stress psi(double number) {
        return KIND.of(number, Units.STRESS_PSI);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the stress
     * @throws OutOfRangeException if the number is not allowed for a stress
     */
    public static Stress of(double number, Unit<Stress> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#STRESS_PASCAL}.
     *
     * @param si the SI value
     * @return the stress
     * @throws OutOfRangeException if the value is not allowed for a stress
     */
    public static Stress ofSi(double si) {
        return new Stress(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 120 lbf}
     * @return the stress
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a stress
     */
    @JsonCreator
    public static Stress parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Stress, Stress> kind() {
        return KIND;
    }

    @Override
    Stress make(double si) {
        return new Stress(si);
    }
}
