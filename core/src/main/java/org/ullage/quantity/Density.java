package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * Mass per volume, above zero. Immutable.
 */
public final class Density extends Quantity<Density, Density> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Density, Density> KIND = new Kind<>(
            "density",
            Kind.Range.POSITIVE,
            Density::new,
            Units.KILOGRAM_PER_CUBIC_METRE,
            Units.POUND_PER_CUBIC_FOOT,
            List.of(Units.KILOGRAM_PER_CUBIC_METRE, Units.POUND_PER_CUBIC_FOOT));

    @JsonIgnore
    private Density(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of kilograms per cubic metre.
     *
     * @param number the number of kilograms per cubic metre
     * @return the density
     * @throws OutOfRangeException if the number is not allowed for a density
     */
    public static Density kilogramsPerCubicMetre(double number) {
        return KIND.of(number, Units.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the density
     * @throws OutOfRangeException if the number is not allowed for a density
     */
    public static Density of(double number, Unit<Density> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#KILOGRAM_PER_CUBIC_METRE}.
     *
     * @param si the SI value
     * @return the density
     * @throws OutOfRangeException if the value is not allowed for a density
     */
    public static Density ofSi(double si) {
        return new Density(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 62.4 lb/ft3}
     * @return the density
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a density
     */
    @JsonCreator
    public static Density parse(String text) {
        return KIND.parse(text);
    }

    /**
     * The volume of one unit of mass.
     *
     * @return one divided by this density
     */
    public SpecificVolume specificVolume() {
        return SpecificVolume.ofSi(1 / si());
    }

    /**
     * The mass in a volume of this density.
     *
     * @param volume a volume, zero or more
     * @return density times volume
     * @throws OutOfRangeException if the volume is negative
     */
    public Mass times(Volume volume) {
        return Mass.ofSi(si() * volume.si());
    }

    @Override
    Kind<Density, Density> kind() {
        return KIND;
    }
}
