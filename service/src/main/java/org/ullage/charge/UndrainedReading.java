package org.ullage.charge;

import java.io.Serializable;
import org.ullage.pressure.StaticHead;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;

/**
 * The trap of every charge check: gas above water has the pressure of the loop, so a gas valve that shows the loop's gauge corrected for
 * height was read with water in the vessel and says nothing about the charge. Immutable.
 *
 * @param reading at the gas valve
 * @param loopGauge reading of the loop's gauge before the vessel was parted from the loop
 * @param gaugeAbove height of that gauge above the vessel, negative if below
 * @param errors what both gauges together may be off by
 */
public record UndrainedReading(GaugePressure reading, GaugePressure loopGauge, Length gaugeAbove, GaugeTolerance errors)
        implements Serializable {

    /**
     * A pair of readings, to within what a charge is usually set to.
     *
     * @param reading at the gas valve
     * @param loopGauge reading of the loop's gauge before the vessel was parted from the loop
     * @param gaugeAbove height of that gauge above the vessel, negative if below
     * @return the pair
     */
    public static UndrainedReading of(GaugePressure reading, GaugePressure loopGauge, Length gaugeAbove) {
        return new UndrainedReading(reading, loopGauge, gaugeAbove, GaugeTolerance.USUAL);
    }

    /**
     * The loop's pressure at the vessel.
     *
     * @return the loop's gauge and the column down to the vessel
     */
    public GaugePressure loopAtVessel() {
        return loopGauge.plus(StaticHead.of(gaugeAbove));
    }

    /**
     * How far the reading is from the loop's pressure.
     *
     * @return reading less loop, at the vessel
     */
    public PressureDifference difference() {
        return reading.minus(loopAtVessel());
    }

    /**
     * Whether the test was probably done with water in the vessel. It may be chance: then it comes out the same with the drain open.
     *
     * @return whether the two pressures are the same to within the errors
     */
    public boolean isSuspect() {
        return errors.holds(difference());
    }

    /**
     * The judgement in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        String loop = "the loop's " + loopAtVessel().text(system) + " at the vessel";
        return isSuspect()
                ? reading.text(system) + " at the gas valve equals " + loop
                        + ": the water side was not empty, the test was done wrongly; drain and read again"
                : reading.text(system) + " at the gas valve differs from " + loop + " by "
                        + difference().signedText(system);
    }
}
