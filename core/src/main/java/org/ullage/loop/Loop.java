package org.ullage.loop;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * A closed loop as expansion sees it: how much fluid of which kind, in pipes of which material. Immutable.
 *
 * <p>Made in three steps that cannot be skipped: contents, pipe, fluid.
 */
public final class Loop implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Volume contents;
    private final @Nullable PipeMaterial pipe;
    private final LoopFluid fluid;
    private final @Nullable StagnationContents stagnation;

    private Loop(
            Volume contents, @Nullable PipeMaterial pipe, LoopFluid fluid, @Nullable StagnationContents stagnation) {
        this.contents = contents;
        this.pipe = pipe;
        this.fluid = fluid;
        this.stagnation = stagnation;
    }

    /**
     * Begins a loop by its contents: all fluid in boiler, emitters and pipes, without the expansion vessel.
     *
     * @param contents above zero
     * @return the next step
     * @throws OutOfRangeException if the contents are zero or negative
     */
    public static PipeStep withContents(Volume contents) {
        if (contents.si() <= 0) {
            throw new OutOfRangeException(
                    "contents", contents.text(Units.LITRE), "above zero", "give the loop's volume without the vessel");
        }
        return new PipeStep(contents);
    }

    /**
     * The loop's fluid volume, cold, without the vessel.
     *
     * @return the contents
     */
    public Volume contents() {
        return contents;
    }

    /**
     * The pipe material.
     *
     * @return the material, or null if it was not stated
     */
    public @Nullable PipeMaterial pipe() {
        return pipe;
    }

    /**
     * The fluid.
     *
     * @return the fluid and its model
     */
    public LoopFluid fluid() {
        return fluid;
    }

    /**
     * The same loop with other contents.
     *
     * @param other above zero
     * @return a copy
     * @throws OutOfRangeException if the contents are zero or negative
     */
    public Loop holding(Volume other) {
        return new Loop(withContents(other).contents, pipe, fluid, stagnation);
    }

    /**
     * The same loop with another fluid or another model of it.
     *
     * @param other the fluid
     * @return a copy
     */
    public Loop refilledWith(LoopFluid other) {
        return new Loop(contents, pipe, other, stagnation);
    }

    /**
     * The same loop as a solar one that may stand still in the sun.
     *
     * @param boiling what may turn to vapour
     * @return a copy
     */
    public Loop stagnating(StagnationContents boiling) {
        return new Loop(contents, pipe, fluid, boiling);
    }

    /**
     * What may turn to vapour in stagnation.
     *
     * @return the contents, or null if the loop is not a solar one or they were not given
     */
    public @Nullable StagnationContents stagnation() {
        return stagnation;
    }

    /** The step that asks for the pipe material. */
    public static final class PipeStep {

        private final Volume contents;

        private PipeStep(Volume contents) {
            this.contents = contents;
        }

        /**
         * Steel pipe.
         *
         * @return the next step
         */
        public FluidStep steel() {
            return pipe(PipeMaterial.STEEL);
        }

        /**
         * Copper pipe.
         *
         * @return the next step
         */
        public FluidStep copper() {
            return pipe(PipeMaterial.COPPER);
        }

        /**
         * Pipe of any material.
         *
         * @param material the material
         * @return the next step
         */
        public FluidStep pipe(PipeMaterial material) {
            return new FluidStep(contents, material);
        }

        /**
         * No credit for the growth of the pipe: the safe side, and right for plastic pipe.
         *
         * @return the next step
         */
        public FluidStep rigid() {
            return pipe(PipeMaterial.RIGID);
        }

        /**
         * Unknown pipe: a method that would take a pipe credit then takes none and warns.
         *
         * @return the next step
         */
        public FluidStep pipeNotStated() {
            return new FluidStep(contents, null);
        }
    }

    /** The step that asks for the fluid. */
    public static final class FluidStep {

        private final Volume contents;
        private final @Nullable PipeMaterial pipe;

        private FluidStep(Volume contents, @Nullable PipeMaterial pipe) {
            this.contents = contents;
            this.pipe = pipe;
        }

        /**
         * Fills the loop.
         *
         * @param fluid the fluid and its model
         * @return the loop
         */
        public Loop filledWith(LoopFluid fluid) {
            return new Loop(contents, pipe, fluid, null);
        }
    }
}
