package org.ullage.loop;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/**
 * Contents measured while filling or draining. What the meter could not see (air left in, water left in low points) makes only
 * the high end larger; the typical value is what was measured.
 *
 * <pre>{@code
 * Contents contents = MeasuredContents.meteredFill(Volume.litres(412))
 *         .inVessel(Volume.litres(6))
 *         .uncertainty(Volume.litres(8))
 *         .notCounted(Volume.litres(10));
 * }</pre>
 */
public final class MeasuredContents {

    private static final Caution AIR = new Caution(
            "Air that stays in at filling is replaced by water later: read the meter again after the loop was vented hot.",
            Source.commonPractice("metered fill"));

    private static final Caution RESIDUE = new Caution(
            "Water stays behind below the drain and in traps; measure it cold, for hot water shrinks as it cools.",
            Source.commonPractice("drain-down into a measured vessel or through a meter"));

    private final String name;
    private final String missing;
    private final Volume measured;
    private final Caution caution;

    private MeasuredContents(String name, String missing, Volume measured, Caution caution) {
        this.name = name;
        this.missing = missing;
        this.measured = measured;
        this.caution = caution;
    }

    /**
     * Begins with the water that went through a meter while the empty loop was filled.
     *
     * @param metered above zero
     * @return the next step
     * @throws OutOfRangeException if it is zero or negative
     */
    public static VesselStep meteredFill(Volume metered) {
        return begin(new MeasuredContents("metered fill", "air left in, at most", metered, AIR));
    }

    /**
     * Begins with the water that came out when the loop was drained.
     *
     * @param drained above zero
     * @return the next step
     * @throws OutOfRangeException if it is zero or negative
     */
    public static VesselStep drainDown(Volume drained) {
        return begin(new MeasuredContents("drained", "water left in, at most", drained, RESIDUE));
    }

    private static VesselStep begin(MeasuredContents measured) {
        require(measured.name + " volume", measured.measured, measured.measured.si() > 0, "above zero");
        return new VesselStep(measured);
    }

    private static void require(String name, Volume volume, boolean allowed, String range) {
        if (!allowed) {
            throw new OutOfRangeException(
                    name, volume.textInBothSystems(), range, "check the readings and their order");
        }
    }

    /** The step that asks what part of the measured water was in the expansion vessel. */
    public static final class VesselStep {

        private final MeasuredContents measured;

        private VesselStep(MeasuredContents measured) {
            this.measured = measured;
        }

        /**
         * Water in the vessel that was measured along: what it had taken in at the fill pressure, or gave back at draining.
         *
         * @param water zero or more
         * @return the next step
         * @throws OutOfRangeException if it is negative
         */
        public UncertaintyStep inVessel(Volume water) {
            require("water in the vessel", water, water.si() >= 0, "zero or more");
            return new UncertaintyStep(measured, water);
        }

        /**
         * The vessel was shut off, or not yet connected: no water of it was measured.
         *
         * @return the next step
         */
        public UncertaintyStep vesselShutOff() {
            return inVessel(Volume.litres(0));
        }
    }

    /** The step that asks how sure the measurement is. */
    public static final class UncertaintyStep {

        private final MeasuredContents measured;
        private final Volume vessel;

        private UncertaintyStep(MeasuredContents measured, Volume vessel) {
            this.measured = measured;
            this.vessel = vessel;
        }

        /**
         * The uncertainty of the measured volume.
         *
         * @param plusMinus either way, zero or more
         * @return the next step
         * @throws OutOfRangeException if it is negative
         */
        public MissingStep uncertainty(Volume plusMinus) {
            require("uncertainty", plusMinus, plusMinus.si() >= 0, "zero or more");
            return new MissingStep(this, plusMinus);
        }
    }

    /** The step that asks for what the meter could not see. */
    public static final class MissingStep {

        private final UncertaintyStep before;
        private final Volume plusMinus;

        private MissingStep(UncertaintyStep before, Volume plusMinus) {
            this.before = before;
            this.plusMinus = plusMinus;
        }

        /**
         * Contents that were not measured: pockets of air at filling, residual water at draining.
         *
         * @param atMost the most there can be, zero or more
         * @return the contents
         * @throws OutOfRangeException if it is negative, or the lowest contents are not above zero
         */
        public Contents notCounted(Volume atMost) {
            require("volume not counted", atMost, atMost.si() >= 0, "zero or more");
            MeasuredContents measured = before.measured;
            List<ContentsItem> items = new ArrayList<>();
            items.add(line(measured.name, VolumeRange.around(measured.measured, plusMinus)));
            Volume none = Volume.litres(0);
            if (before.vessel.compareTo(none) > 0) {
                items.add(line("less water in the vessel", VolumeRange.exactly(none.minus(before.vessel))));
            }
            if (atMost.compareTo(none) > 0) {
                items.add(line(measured.missing, new VolumeRange(none, none, atMost)));
            }
            return new Contents(ContentsBasis.MEASURED, items, List.of(measured.caution));
        }

        /**
         * Nothing escaped the measurement: vented until no more air came, or drained to the last drop.
         *
         * @return the contents
         * @throws OutOfRangeException if the lowest contents are not above zero
         */
        public Contents allCounted() {
            return notCounted(Volume.litres(0));
        }

        private static ContentsItem line(String name, VolumeRange volume) {
            return ContentsItem.of(name, Amount.of(1), volume, Source.given());
        }
    }
}
