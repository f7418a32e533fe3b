package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * Pressure counted from vacuum, always above zero. The gas law knows no other. In text its unit is followed by {@code abs}.
 * Immutable.
 */
public final class AbsolutePressure extends Quantity<AbsolutePressure, Pressure> implements Pressure {

    private static final long serialVersionUID = 1L;

    private static final Kind<AbsolutePressure, Pressure> KIND = new Kind<>(
            "absolute pressure",
            PressureBasis.ABSOLUTE,
            Kind.Range.POSITIVE,
            AbsolutePressure::new,
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

    /** The standard atmosphere, 101.325 kPa (ISO 2533; exact by convention). */
    public static final AbsolutePressure STANDARD_ATMOSPHERE = ofSi(Units.STANDARD_ATMOSPHERE.value());

    @JsonIgnore
    private AbsolutePressure(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of bar.
     *
     * @param number the number of bar
     * @return the absolute pressure
     * @throws OutOfRangeException if the number is not allowed for an absolute pressure
     */
    public static AbsolutePressure bar(double number) {
        return KIND.of(number, Units.BAR);
    }

    /**
     * Makes one from a number of kilopascals.
     *
     * @param number the number of kilopascals
     * @return the absolute pressure
     * @throws OutOfRangeException if the number is not allowed for an absolute pressure
     */
    public static AbsolutePressure kilopascals(double number) {
        return KIND.of(number, Units.KILOPASCAL);
    }

    /**
     * Makes one from a number of pounds-force per square inch.
     *
     * @param number the number of pounds-force per square inch
     * @return the absolute pressure
     * @throws OutOfRangeException if the number is not allowed for an absolute pressure
     */
    public static AbsolutePressure psi(double number) {
        return KIND.of(number, Units.PSI);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the absolute pressure
     * @throws OutOfRangeException if the number is not allowed for an absolute pressure
     */
    public static AbsolutePressure of(double number, Unit<Pressure> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#PASCAL}.
     *
     * @param si the SI value
     * @return the absolute pressure
     * @throws OutOfRangeException if the value is not allowed for an absolute pressure
     */
    public static AbsolutePressure ofSi(double si) {
        return new AbsolutePressure(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 24.7 psi abs}
     * @return the absolute pressure
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for an absolute pressure
     */
    @JsonCreator
    public static AbsolutePressure parse(String text) {
        return KIND.parse(text);
    }

    /**
     * The same pressure as a gauge shows it.
     *
     * @param ambient the pressure of the surrounding air
     * @return the gauge pressure
     */
    public GaugePressure gauge(AbsolutePressure ambient) {
        return GaugePressure.ofSi(si() - ambient.si());
    }

    /**
     * How far this pressure is above another.
     *
     * @param other the pressure to compare with
     * @return the difference, negative if this is the lower one
     */
    public PressureDifference minus(AbsolutePressure other) {
        return PressureDifference.ofSi(si() - other.si());
    }

    @Override
    Kind<AbsolutePressure, Pressure> kind() {
        return KIND;
    }
}
