package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A difference of two pressures: a margin, a head, a swing. Neither gauge nor absolute. May be negative. Immutable.
 */
public final class PressureDifference extends AdditiveQuantity<PressureDifference, Pressure> implements Pressure {

    private static final long serialVersionUID = 1L;

    private static final Kind<PressureDifference, Pressure> KIND = new Kind<>(
            "pressure difference",
            Kind.Range.ANY,
            PressureDifference::new,
            Units.BAR,
            Units.PSI,
            List.of(
                    Units.PASCAL,
                    Units.KILOPASCAL,
                    Units.MEGAPASCAL,
                    Units.BAR,
                    Units.MILLIBAR,
                    Units.PSI,
                    Units.METRE_OF_WATER,
                    Units.FOOT_OF_WATER));

    @JsonIgnore
    private PressureDifference(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of bar.
     *
     * @param number the number of bar
     * @return the pressure difference
     * @throws OutOfRangeException if the number is not allowed for a pressure difference
     */
    public static PressureDifference bar(double number) {
        return KIND.of(number, Units.BAR);
    }

    /**
     * Makes one from a number of kilopascals.
     *
     * @param number the number of kilopascals
     * @return the pressure difference
     * @throws OutOfRangeException if the number is not allowed for a pressure difference
     */
    public static PressureDifference kilopascals(double number) {
        return KIND.of(number, Units.KILOPASCAL);
    }

    /**
     * Makes one from a number of pounds-force per square inch.
     *
     * @param number the number of pounds-force per square inch
     * @return the pressure difference
     * @throws OutOfRangeException if the number is not allowed for a pressure difference
     */
    public static PressureDifference psi(double number) {
        return KIND.of(number, Units.PSI);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the pressure difference
     * @throws OutOfRangeException if the number is not allowed for a pressure difference
     */
    public static PressureDifference of(double number, Unit<Pressure> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#PASCAL}.
     *
     * @param si the SI value
     * @return the pressure difference
     * @throws OutOfRangeException if the value is not allowed for a pressure difference
     */
    public static PressureDifference ofSi(double si) {
        return new PressureDifference(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 0.3 bar}
     * @return the pressure difference
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a pressure difference
     */
    @JsonCreator
    public static PressureDifference parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<PressureDifference, Pressure> kind() {
        return KIND;
    }

    @Override
    PressureDifference make(double si) {
        return new PressureDifference(si);
    }
}
