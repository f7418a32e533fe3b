package org.ullage.operation;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/**
 * A loop with its vessels and its state at one moment, from which its pressure at any temperature follows: see {@link OperatingCurve}.
 * Immutable.
 *
 * @param loop contents at the fill temperature, pipe and fluid; a pipe not stated does not grow
 * @param bank its vessels
 * @param fill pressure at the reference point and loop temperature at one moment: filling, or any reading later on
 * @param later the state after a vessel was shut off or water let out since then, or null if neither was
 * @param vesselWater how warm the water in the vessels is
 * @param wall a pipe wall typical of the loop that stretches, or null if none does; it only matters once the vessels take no more
 */
public record LoopInUse(
        Loop loop,
        VesselBank bank,
        Reading fill,
        @Nullable Reading later,
        VesselWater vesselWater,
        @Nullable PipeWall wall)
        implements Serializable {

    /**
     * A loop by its state at one moment, water entering the vessels as warm as the loop, and walls that do not stretch.
     *
     * @param loop contents at the fill temperature, pipe and fluid
     * @param bank its vessels
     * @param fill pressure and temperature at that moment
     * @return the loop in use
     */
    public static LoopInUse of(Loop loop, VesselBank bank, Reading fill) {
        return new LoopInUse(loop, bank, fill, null, VesselWater.ENTERS_AS_WARM_AS_LOOP, null);
    }

    /**
     * The same loop with another convention for the water in the vessels.
     *
     * @param water the convention
     * @return a copy
     */
    public LoopInUse with(VesselWater water) {
        return new LoopInUse(loop, bank, fill, later, water, wall);
    }

    /**
     * The same loop with pipe walls that stretch.
     *
     * @param pipe a wall typical of the loop
     * @return a copy
     */
    public LoopInUse with(PipeWall pipe) {
        return new LoopInUse(loop, bank, fill, later, vesselWater, pipe);
    }

    /**
     * The same loop with other vessels: what a lost charge or an added vessel would do.
     *
     * @param vessels the vessels
     * @return a copy
     */
    public LoopInUse with(VesselBank vessels) {
        return new LoopInUse(loop, vessels, fill, later, vesselWater, wall);
    }

    /**
     * The same loop with other contents, pipe or fluid.
     *
     * @param other the loop
     * @return a copy
     */
    public LoopInUse with(Loop other) {
        return new LoopInUse(other, bank, fill, later, vesselWater, wall);
    }

    /**
     * The same loop filled otherwise, with nothing shut off or let out since.
     *
     * @param moment pressure and temperature
     * @return a copy
     */
    public LoopInUse filledTo(Reading moment) {
        return new LoopInUse(loop, bank, moment, null, vesselWater, wall);
    }

    /**
     * The same loop after a vessel was shut off or water was let out: the vessels that are left and a state from then on.
     *
     * @param vessels those open to the loop
     * @param moment pressure and temperature since then
     * @return a copy
     */
    public LoopInUse leftAt(VesselBank vessels, Reading moment) {
        return new LoopInUse(loop, vessels, fill, moment, vesselWater, wall);
    }

    /**
     * The state the amount of liquid is known by.
     *
     * @return the later state if there is one, else the fill
     */
    public Reading known() {
        Reading since = later;
        return since == null ? fill : since;
    }

    /**
     * Its pressure against temperature.
     *
     * @return the curve
     * @throws OutOfRangeException if the fill pressure is at or below vacuum or the fluid's model does not answer for the fill
     */
    public OperatingCurve curve() {
        return new OperatingCurve(this);
    }

    /**
     * Fill and conventions in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        Reading since = later;
        return loop.contents().text(system) + " of " + loop.fluid().name() + " at "
                + fill.pressure().text(system) + " and "
                + fill.temperature().text(system)
                + (since == null
                        ? ""
                        : ", left at " + since.pressure().text(system) + " and "
                                + since.temperature().text(system))
                + "; " + vesselWater.text(system);
    }
}
