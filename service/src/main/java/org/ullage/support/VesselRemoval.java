package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Mass;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/**
 * Whether one person may take a vessel off: waterlogged, as it may well be, and drained. Immutable.
 *
 * @param weight the vessel
 * @param limit what one person may lift, by a {@link LiftLimit} or a {@link LiftingFilter}
 * @param limitSource where the limit comes from
 */
public record VesselRemoval(VesselWeight weight, Mass limit, Source limitSource) implements Serializable {

    /** What to do. */
    public enum Advice {
        /** Even waterlogged it is within the limit; it is drained first all the same. */
        ONE_PERSON("within the limit even when waterlogged; drain it first all the same"),
        /** Within the limit only when drained. */
        DRAIN_FIRST("too heavy when waterlogged: drain it and weigh it before one person lifts it"),
        /** Too heavy even when drained. */
        LIFTING_GEAR("too heavy for one person even when drained: use lifting gear or more people");

        private final String words;

        Advice(String words) {
            this.words = words;
        }

        /**
         * The advice in words.
         *
         * @return one sentence without its full stop
         */
        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * By the lifting equation.
     *
     * @param weight the vessel
     * @param lift the lift
     * @return the removal
     */
    public static VesselRemoval by(VesselWeight weight, LiftLimit lift) {
        return new VesselRemoval(weight, lift.limit(), Niosh.EQUATION);
    }

    /**
     * By the filter.
     *
     * @param weight the vessel
     * @param filter the filter
     * @return the removal
     */
    public static VesselRemoval by(VesselWeight weight, LiftingFilter filter) {
        return new VesselRemoval(weight, filter.limit(), filter.source());
    }

    /**
     * The waterlogged vessel against the limit.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Mass> waterlogged() {
        return new LimitCheck<>("lifting the vessel waterlogged", weight.waterlogged(), limit, limitSource);
    }

    /**
     * The drained vessel against the limit.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Mass> drained() {
        return new LimitCheck<>("lifting the vessel drained", weight.empty(), limit, limitSource);
    }

    /**
     * What to do.
     *
     * @return the advice
     */
    public Advice advice() {
        if (waterlogged().passes()) {
            return Advice.ONE_PERSON;
        }
        return drained().passes() ? Advice.DRAIN_FIRST : Advice.LIFTING_GEAR;
    }

    /**
     * What the reader must know.
     *
     * @return cautions
     */
    public List<Caution> cautions() {
        return List.of(SupportCautions.DRAIN_FIRST, SupportCautions.LIFTING);
    }

    /**
     * The verdict in words.
     *
     * @param system metric or inch-pound
     * @return three lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return waterlogged().text(system) + "\n" + drained().text(system) + "\n" + advice() + "\n";
    }
}
