package org.ullage.charge;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;

/**
 * The range of a dial. Standard ones are in {@link GaugeRanges}. Immutable.
 *
 * @param low lowest pressure on the dial
 * @param high highest pressure on the dial
 * @param source where the range comes from
 */
public record GaugeRange(GaugePressure low, GaugePressure high, Source source) implements Serializable {

    /**
     * Checks the order.
     *
     * @param low lowest pressure on the dial
     * @param high highest pressure on the dial
     * @param source where the range comes from
     * @throws OutOfRangeException if the highest is not above the lowest pressure
     */
    public GaugeRange {
        if (high.compareTo(low) <= 0) {
            throw new OutOfRangeException(
                    "highest pressure on the dial",
                    high.textInBothSystems(),
                    "above the lowest, " + low.textInBothSystems(),
                    "read both ends of the dial again");
        }
    }

    /**
     * A range that the caller read on a dial.
     *
     * @param low lowest pressure on the dial
     * @param high highest pressure on the dial
     * @return the range
     * @throws OutOfRangeException if the highest is not above the lowest pressure
     */
    public static GaugeRange given(GaugePressure low, GaugePressure high) {
        return new GaugeRange(low, high, Source.given());
    }

    /**
     * What the dial spans.
     *
     * @return highest less lowest
     */
    public PressureDifference span() {
        return high.minus(low);
    }

    /**
     * Where a reading stands on the dial.
     *
     * @param reading on the dial
     * @return share of the span, from 0 to 1
     * @throws OutOfRangeException if it is not on the dial
     */
    public double position(GaugePressure reading) {
        if (!covers(reading)) {
            throw new OutOfRangeException(
                    "reading",
                    reading.textInBothSystems(),
                    "on the dial, from " + low.textInBothSystems() + " to " + high.textInBothSystems(),
                    "take a gauge that covers it");
        }
        return Math.min(1, Math.max(0, share(reading)));
    }

    /**
     * The part of the dial in which a reading stands.
     *
     * @param reading on the dial
     * @return lowest quarter, middle half or highest quarter
     * @throws OutOfRangeException if it is not on the dial
     */
    public ScalePart part(GaugePressure reading) {
        return ScalePart.of(position(reading));
    }

    /**
     * Whether a reading stands in the middle half, where most gauges are best. Both ends of it count.
     *
     * @param reading on the dial
     * @return whether it does
     * @throws OutOfRangeException if it is not on the dial
     */
    public boolean inMiddleHalf(GaugePressure reading) {
        return part(reading) == ScalePart.MIDDLE_HALF;
    }

    /**
     * Whether a pressure stands on the dial.
     *
     * @param pressure any pressure
     * @return whether it is between the ends, or at one
     */
    public boolean covers(GaugePressure pressure) {
        return ScalePart.isOnScale(share(pressure));
    }

    private double share(GaugePressure pressure) {
        return pressure.minus(low).dividedBy(span());
    }

    /**
     * The range for people, in both systems, because a dial is known by its own.
     *
     * @param system metric or inch-pound, which comes first
     * @return such as {@code 0 psi to 100 psi (0 bar to 6.895 bar)}
     */
    public String text(UnitSystem system) {
        UnitSystem other = system == UnitSystem.SI ? UnitSystem.IP : UnitSystem.SI;
        return ends(system) + " (" + ends(other) + ")";
    }

    private String ends(UnitSystem system) {
        return low.text(system) + " to " + high.text(system);
    }
}
