package org.ullage.support;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * What a vessel weighs: empty, in use, and waterlogged, when its whole nominal volume is full of fluid. Immutable.
 *
 * @param nominal nominal volume, above zero
 * @param shell what it weighs empty
 * @param fluid what fills it
 */
public record VesselWeight(Volume nominal, ShellMass shell, ContainedFluid fluid) implements Serializable {

    private static final Source MASSES = Source.computed("conservation of mass", "shell and fluid together");

    private static final Source UMC = Source.published(
            "Uniform Mechanical Code (UMC)",
            "2024 ed., 1004.1: supports carry twice the weight of the tank filled with water, without straining the pipes");

    /**
     * Checks the volume.
     *
     * @param nominal nominal volume
     * @param shell what it weighs empty
     * @param fluid what fills it
     * @throws OutOfRangeException if the nominal volume is zero or negative
     */
    public VesselWeight {
        Inputs.requirePositive("nominal volume", nominal, "take it from the vessel's plate");
    }

    /**
     * The vessel without fluid.
     *
     * @return the shell mass
     */
    public Mass empty() {
        return shell.mass();
    }

    /**
     * The vessel in use.
     *
     * @param content fluid in it, such as the reserve when cold; zero to the nominal volume
     * @return shell and content
     * @throws OutOfRangeException if the content is negative or above the nominal volume
     */
    public Mass normal(Volume content) {
        if (content.si() < 0 || content.compareTo(nominal) > 0) {
            throw new OutOfRangeException(
                    "content of the vessel",
                    content.textInBothSystems(),
                    "from zero to the nominal volume " + nominal.textInBothSystems(),
                    "give the fluid on the water side, not the gas");
        }
        return shell.mass().plus(fluid.density().times(content));
    }

    /**
     * The vessel full of fluid: what its support has to hold sooner or later.
     *
     * @return shell mass + nominal volume x density
     */
    public Mass waterlogged() {
        return normal(nominal);
    }

    /**
     * What supports of an expansion tank have to carry under UMC 1004.1.
     *
     * @return twice the {@link #waterlogged()} mass
     */
    public Mass twiceFilled() {
        return waterlogged().times(2);
    }

    /**
     * What the reader must know.
     *
     * @return cautions, those of the shell mass first
     */
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>(shell.cautions());
        cautions.add(SupportCautions.WATERLOGGED);
        cautions.add(SupportCautions.DRAIN_FIRST);
        return List.copyOf(cautions);
    }

    /**
     * How the weights were reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        Step empty = Step.given("empty mass of the vessel", Term.of("m_0", empty()), "shell", shell.source());
        Step density =
                Step.given("density of " + fluid.name(), Term.of("rho", fluid.density()), "density", fluid.source());
        Step full = new Step(
                "waterlogged mass: the whole nominal volume full",
                "m_0 + V_n * rho",
                List.of(empty.result(), Term.of("V_n", nominal), density.result()),
                Term.of("m_w", waterlogged()),
                MASSES);
        Step weight = new Step(
                "its weight",
                "m_w * g_n",
                List.of(full.result(), Term.of(Units.STANDARD_GRAVITY)),
                Term.of("W", waterlogged().weight()),
                MASSES);
        Step support = new Step(
                "mass that the support carries where the code asks for twice the filled tank",
                "2 * m_w",
                List.of(full.result()),
                Term.of("m_s", twiceFilled()),
                UMC);
        return new Workings("Weight of a vessel", List.of(empty, density, full, weight, support));
    }

    /**
     * The weights in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return nominal.text(system) + " vessel: empty " + SupportText.of(empty(), system) + " "
                + shell.source().provenance()
                + ", waterlogged " + SupportText.of(waterlogged(), system) + "; support for twice that by UMC 1004.1: "
                + SupportText.of(twiceFilled(), system);
    }
}
