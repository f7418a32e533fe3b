package org.ullage.support;

import java.io.Serializable;
import org.ullage.loop.PipeMaterial;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;

/**
 * A stress that a pipe may carry for long. Immutable.
 *
 * @param stress the allowable stress, above zero
 * @param source where it comes from
 */
public record AllowableStress(Stress stress, Source source) implements Serializable {

    /** Steel pipe ASTM A53 grade B in building services: 15,000 psi. */
    public static final AllowableStress STEEL = new AllowableStress(
            Stress.psi(15_000),
            Source.fromMemory(
                    "ASME B31.9, Building Services Piping", "allowable stresses, ASTM A53 grade B, cold to 100 degF"));

    /** Copper tube ASTM B88 as it is beside a brazed or soldered joint, annealed: 6,000 psi. */
    public static final AllowableStress COPPER = new AllowableStress(
            Stress.psi(6_000),
            Source.fromMemory(
                    "ASME B31.9, Building Services Piping", "allowable stresses, ASTM B88 annealed, cold to 100 degF"));

    /**
     * Checks the stress.
     *
     * @param stress the allowable stress
     * @param source where it comes from
     * @throws OutOfRangeException if the stress is zero or negative
     */
    public AllowableStress {
        Inputs.requirePositive("allowable stress", stress, "take it from the piping code that holds on site");
    }

    /**
     * The caller's allowable stress.
     *
     * @param stress above zero
     * @return the allowable stress
     * @throws OutOfRangeException if the stress is zero or negative
     */
    public static AllowableStress given(Stress stress) {
        return new AllowableStress(stress, Source.given());
    }

    /**
     * The cited value for a pipe material.
     *
     * @param material steel or copper
     * @return {@link #STEEL} or {@link #COPPER}
     * @throws OutOfRangeException for any other material: plastic pipe carries no vessel
     */
    public static AllowableStress usualFor(PipeMaterial material) {
        if (material.equals(PipeMaterial.STEEL)) {
            return STEEL;
        }
        if (material.equals(PipeMaterial.COPPER)) {
            return COPPER;
        }
        throw new OutOfRangeException(
                "pipe that carries a vessel",
                material.name(),
                "steel or copper",
                "give the vessel a support of its own");
    }
}
