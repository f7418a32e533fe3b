package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.workings.Caution;

/**
 * What the empty vessel weighs, and how that is known. An estimate comes from {@link ShellEstimate#shellMass()}. Immutable.
 *
 * @param mass the empty mass, above zero
 * @param source where it comes from
 * @param cautions what the reader must know about it
 */
public record ShellMass(Mass mass, Source source, List<Caution> cautions) implements Serializable {

    /**
     * Checks the mass and copies the cautions.
     *
     * @param mass the empty mass
     * @param source where it comes from
     * @param cautions what the reader must know about it
     * @throws OutOfRangeException if the mass is zero
     */
    public ShellMass {
        Inputs.requirePositive(
                "empty mass of the vessel", mass, "take it from the plate, or estimate it by ShellEstimate");
        cautions = List.copyOf(cautions);
    }

    /**
     * The mass on the vessel's plate or data sheet.
     *
     * @param mass with membrane, feet and flange, above zero
     * @return the shell mass
     * @throws OutOfRangeException if the mass is zero
     */
    public static ShellMass fromPlate(Mass mass) {
        return new ShellMass(mass, Source.given(), List.of());
    }
}
