package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Moment;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * A vessel that hangs from its connection pipe, stands on it or sticks out on it: M = W e + F a, bending stress M / S, and the weight
 * spread over the metal, W / A, on top, which is pull or push in an upright stub and stands in for shear in a level one. Immutable.
 *
 * @param section the weakest ring of the pipe
 * @param carried what hangs on it: the waterlogged mass, or twice that where the code asks so
 * @param eccentricity horizontal distance from the fixed end of the stub, or from the axis of an upright one, to the centre of
 *     gravity; zero or more
 * @param side horizontal force at the centre of gravity
 * @param allowable what the pipe may carry
 */
public record PipeStub(
        StubSection section, Mass carried, Length eccentricity, SideForce side, AllowableStress allowable)
        implements Serializable {

    private static final Source BENDING =
            Source.computed("elementary beam theory", "cantilever with an end load; bending and direct stress added");

    /**
     * Checks the signs.
     *
     * @param section the weakest ring
     * @param carried what hangs on it
     * @param eccentricity lever arm of the weight
     * @param side horizontal force
     * @param allowable what the pipe may carry
     * @throws OutOfRangeException if the mass is zero or the eccentricity negative
     */
    public PipeStub {
        Inputs.requirePositive("mass carried by the pipe", carried, "take the waterlogged mass of the vessel");
        Inputs.requireNotNegative("eccentricity", eccentricity, "give the distance without a sign");
    }

    /**
     * A stub without side force.
     *
     * @param section the weakest ring
     * @param carried what hangs on it
     * @param eccentricity lever arm of the weight
     * @param allowable what the pipe may carry
     * @return the check
     * @throws OutOfRangeException if the mass is zero or the eccentricity negative
     */
    public static PipeStub of(StubSection section, Mass carried, Length eccentricity, AllowableStress allowable) {
        return new PipeStub(section, carried, eccentricity, SideForce.NONE, allowable);
    }

    /**
     * The bending moment at the fixed end.
     *
     * @return W e + F a
     */
    public Moment moment() {
        return Moment.ofSi(carried.weight().si() * eccentricity.si()
                + side.force().si() * side.arm().si());
    }

    /**
     * The stress of the outermost fibre from bending alone.
     *
     * @return M / S
     */
    public Stress bendingStress() {
        return section.modulus().stress(moment());
    }

    /**
     * The weight over the metal area.
     *
     * @return W / A
     */
    public Stress directStress() {
        return Stress.ofSi(carried.weight().si() / section.area().si());
    }

    /**
     * Bending and direct stress against the allowable stress.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Stress> check() {
        return new LimitCheck<>(
                "stress of " + section.name(),
                bendingStress().plus(directStress()),
                allowable.stress(),
                allowable.source());
    }

    /**
     * What the reader must know.
     *
     * @return cautions, that about joints and branch among them
     */
    public List<Caution> cautions() {
        return List.of(SupportCautions.ENGINEER, SupportCautions.WATERLOGGED, SupportCautions.JOINTS);
    }

    /**
     * How the stress was reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        Term weight = Term.of("W", carried.weight());
        Step moment = new Step(
                "bending moment at the fixed end",
                "W * e + F * a",
                List.of(
                        weight,
                        SupportText.term("e", eccentricity),
                        Term.of("F", side.force()),
                        SupportText.term("a", side.arm())),
                Term.of("M", moment()),
                BENDING);
        Term outside = SupportText.term("D", section.outside());
        Term bore = SupportText.term("d", section.bore());
        Step modulus = new Step(
                "section modulus of " + section.name(),
                "pi * (D^4 - d^4) / (32 * D)",
                List.of(outside, bore),
                Term.of("S", section.modulus()),
                section.source());
        Step area = new Step(
                "metal area of the same ring",
                "pi / 4 * (D^2 - d^2)",
                List.of(outside, bore),
                SupportText.term("A", section.area()),
                section.source());
        Step stress = new Step(
                "bending and direct stress together; allowable "
                        + allowable.stress().textInBothSystems(),
                "M / S + W / A",
                List.of(moment.result(), modulus.result(), weight, area.result()),
                Term.of("sigma", check().actual()),
                BENDING);
        return new Workings("Vessel carried by its pipe", List.of(moment, modulus, area, stress));
    }

    /**
     * The verdict in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return check().text(system);
    }
}
