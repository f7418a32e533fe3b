package org.ullage.loop;

import java.io.Serializable;
import java.util.regex.Pattern;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * A volume that is known from low to high, with the value that is most likely. All three are the same for a single value.
 * Immutable.
 *
 * @param low lowest value
 * @param typical most likely value
 * @param high highest value
 */
public record VolumeRange(Volume low, Volume typical, Volume high) implements Serializable {

    private static final Pattern TO = Pattern.compile("\\bto\\b");

    /**
     * Checks the order.
     *
     * @param low lowest value
     * @param typical most likely value
     * @param high highest value
     * @throws OutOfRangeException if they are not in rising order
     */
    public VolumeRange {
        if (low.compareTo(typical) > 0 || typical.compareTo(high) > 0) {
            throw new OutOfRangeException(
                    "typical volume",
                    typical.text(UnitSystem.SI),
                    "from the low " + low.text(UnitSystem.SI) + " to the high " + high.text(UnitSystem.SI),
                    "give low, typical and high in this order");
        }
    }

    /**
     * A single value.
     *
     * @param volume the value
     * @return the range that holds nothing else
     */
    public static VolumeRange exactly(Volume volume) {
        return new VolumeRange(volume, volume, volume);
    }

    /**
     * A range whose source gives no typical value: the middle stands for it.
     *
     * @param low lowest value
     * @param high highest value
     * @return the range
     * @throws OutOfRangeException if low is above high
     */
    public static VolumeRange between(Volume low, Volume high) {
        return new VolumeRange(low, Volume.ofSi((low.si() + high.si()) / 2), high);
    }

    /**
     * A value with an uncertainty either way.
     *
     * @param volume the value
     * @param uncertainty zero or more
     * @return the range
     * @throws OutOfRangeException if the uncertainty is negative
     */
    public static VolumeRange around(Volume volume, Volume uncertainty) {
        if (uncertainty.si() < 0) {
            throw new OutOfRangeException(
                    "uncertainty", uncertainty.text(UnitSystem.SI), "zero or more", "give it without a sign");
        }
        return new VolumeRange(volume.minus(uncertainty), volume, volume.plus(uncertainty));
    }

    /**
     * Reads a volume, or two with "to" between them.
     *
     * @param text such as {@code 18 L} or {@code 15 gal to 30 gal}
     * @return a single value, or the range between the two with its middle as the typical value
     * @throws org.ullage.quantity.UnreadableQuantityException if a part is not a number with a known unit
     * @throws OutOfRangeException if low is above high
     */
    public static VolumeRange parse(String text) {
        String[] parts = TO.split(text, -1);
        Volume low = Volume.parse(parts[0]);
        if (parts.length == 1) {
            return exactly(low);
        }
        if (parts.length > 2) {
            throw new OutOfRangeException(
                    "volume", Quoted.of(text), "one volume or two", "write it as \"15 L to 30 L\"");
        }
        return between(low, Volume.parse(parts[1]));
    }

    /**
     * The sum, end by end: the ends are reached only if both err the same way, so the sum is on the wide side.
     *
     * @param other the range to add
     * @return low and low, typical and typical, high and high together
     */
    public VolumeRange plus(VolumeRange other) {
        return new VolumeRange(low.plus(other.low), typical.plus(other.typical), high.plus(other.high));
    }

    /**
     * A multiple.
     *
     * @param factor zero or more
     * @return every value times the factor
     * @throws OutOfRangeException if the factor is negative
     */
    public VolumeRange times(double factor) {
        return new VolumeRange(low.times(factor), typical.times(factor), high.times(factor));
    }

    /**
     * Whether there is nothing between low and high.
     *
     * @return true for a single value
     */
    public boolean isSingle() {
        return low.equals(high);
    }

    /**
     * The range for people.
     *
     * @param system metric or inch-pound
     * @param digits significant digits
     * @return such as {@code 18 L} or {@code 90 L to 135 L, typically 110 L}
     */
    public String text(UnitSystem system, int digits) {
        String middle = typical.text(system, digits);
        return isSingle()
                ? middle
                : low.text(system, digits) + " to " + high.text(system, digits) + ", typically " + middle;
    }
}
