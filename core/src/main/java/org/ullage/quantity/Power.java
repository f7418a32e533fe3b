package org.ullage.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A heat output or power. Immutable.
 */
public final class Power extends AdditiveQuantity<Power, Power> {

    private static final long serialVersionUID = 1L;

    private static final Kind<Power, Power> KIND = new Kind<>(
            "power",
            Kind.Range.ANY,
            Power::new,
            Units.KILOWATT,
            Units.BTU_PER_HOUR,
            List.of(Units.WATT, Units.KILOWATT, Units.BTU_PER_HOUR));

    @JsonIgnore
    private Power(double si) {
        super(KIND, si);
    }

    /**
     * Makes one from a number of kilowatts.
     *
     * @param number the number of kilowatts
     * @return the power
     * @throws OutOfRangeException if the number is not allowed for a power
     */
    public static Power kilowatts(double number) {
        return KIND.of(number, Units.KILOWATT);
    }

    /**
     * Makes one from a number of British thermal units per hour.
     *
     * @param number the number of British thermal units per hour
     * @return the power
     * @throws OutOfRangeException if the number is not allowed for a power
     */
    public static Power btuPerHour(double number) {
        return KIND.of(number, Units.BTU_PER_HOUR);
    }

    /**
     * Makes one from a number in any unit.
     *
     * @param number the number
     * @param unit its unit
     * @return the power
     * @throws OutOfRangeException if the number is not allowed for a power
     */
    public static Power of(double number, Unit<Power> unit) {
        return KIND.of(number, unit);
    }

    /**
     * Makes one from its value in the coherent SI unit, {@link Units#WATT}.
     *
     * @param si the SI value
     * @return the power
     * @throws OutOfRangeException if the value is not allowed for a power
     */
    public static Power ofSi(double si) {
        return new Power(si);
    }

    /**
     * Reads a number and a unit.
     *
     * @param text such as {@code 24 kW}
     * @return the power
     * @throws UnreadableQuantityException if the text is not a number with a known unit
     * @throws OutOfRangeException if the number is not allowed for a power
     */
    @JsonCreator
    public static Power parse(String text) {
        return KIND.parse(text);
    }

    @Override
    Kind<Power, Power> kind() {
        return KIND;
    }

    @Override
    Power make(double si) {
        return new Power(si);
    }
}
