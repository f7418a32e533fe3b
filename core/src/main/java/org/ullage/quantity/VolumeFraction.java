package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * The part of a volume that one component has, from 0 % to 100 %. Not a mass fraction: the conversion needs a stated
 * definition. Immutable.
 */
public final class VolumeFraction extends Quantity<VolumeFraction, VolumeFraction> {

    private static final long serialVersionUID = 1L;

    private static final Kind<VolumeFraction, VolumeFraction> KIND = new Kind<>(
            "volume fraction",
            Kind.Range.FRACTION,
            VolumeFraction::new,
            Units.VOLUME_PERCENT,
            Units.VOLUME_PERCENT,
            List.of(Units.VOLUME_FRACTION, Units.VOLUME_PERCENT));

    @JsonIgnore
    private VolumeFraction(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of percent by volume.
     *
     * @param number the number of percent by volume
     * @return the volume fraction
     * @throws OutOfRangeException if the number is not allowed for a volume fraction
     */
    public static VolumeFraction percent(double number) {
        return KIND.of(number, Units.VOLUME_PERCENT);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the volume fraction
     * @throws OutOfRangeException if the number is not allowed for a volume fraction
     */
    public static VolumeFraction of(double number, Unit<VolumeFraction> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#VOLUME_FRACTION}.
     *
     * @param si the SI value
     * @return the volume fraction
     * @throws OutOfRangeException if the value is not allowed for a volume fraction
     */
    public static VolumeFraction ofSi(double si) {
        return new VolumeFraction(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 30 vol%}
     * @return the volume fraction
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a volume fraction
     */
    @JsonCreator
    public static VolumeFraction parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<VolumeFraction, VolumeFraction> kind() {
        return KIND;
    }
}
