package org.ullage.charge;

import java.io.Serializable;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;

/**
 * A dial gauge: its range and its accuracy class. Its error is a share of the span, so the same gauge is the coarser, relatively, the
 * lower it reads. Immutable.
 *
 * @param range lowest and highest pressure on the dial
 * @param accuracy its accuracy class
 */
public record Gauge(GaugeRange range, GaugeClass accuracy) implements Serializable {

    /**
     * A gauge by the ends of its dial.
     *
     * @param low lowest pressure on the dial
     * @param high highest pressure on the dial
     * @param accuracy its accuracy class
     * @return the gauge
     * @throws OutOfRangeException if the highest is not above the lowest pressure
     */
    public static Gauge of(GaugePressure low, GaugePressure high, GaugeClass accuracy) {
        return new Gauge(GaugeRange.given(low, high), accuracy);
    }

    /**
     * How far the gauge may be off at a reading, either way.
     *
     * @param reading on the dial
     * @return class times span
     * @throws OutOfRangeException if the reading is not on the dial
     */
    public PressureDifference errorAt(GaugePressure reading) {
        return range.span().times(accuracy.percentOfSpan(range.part(reading)) / 100);
    }

    /**
     * The error as a share of the reading.
     *
     * @param reading on the dial
     * @return such as 0.25 for 25 %
     * @throws OutOfRangeException if the reading is not on the dial, or zero
     */
    public double errorOfReading(GaugePressure reading) {
        return errorAt(reading).dividedBy(PressureDifference.ofSi(Math.abs(reading.si())));
    }

    /**
     * The gauge for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code 0 psi to 100 psi (0 bar to 6.895 bar), ASME B40.100 grade B}
     */
    public String text(UnitSystem system) {
        return range.text(system) + ", " + accuracy.name();
    }
}
