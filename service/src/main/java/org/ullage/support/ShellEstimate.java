package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Stress;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * A rough shell mass where the plate does not tell it: a steel cylinder of diameter D with two 2:1 elliptical heads, 1.6 D high in
 * all, so that its straight part is 1.1 D, its volume pi D^3 (1.1/4 + 1/12) and its surface 1.1 pi D^2 and that of an ellipsoid of
 * half axes D/2, D/2, D/4. The wall is the larger of a handling minimum by size and p D / (2 x 110 MPa). No membrane, feet or flange.
 * Immutable.
 *
 * @param nominal nominal volume, 2 to 2000 L
 * @param rating pressure the vessel is rated for, above zero and up to 25 bar
 */
public record ShellEstimate(Volume nominal, GaugePressure rating) implements Serializable {

    private static final Source RULE =
            Source.commonPractice("rough shell mass from usual proportions of pressed steel vessels");

    private static final Constant HEIGHT = new Constant("h", 1.6, "1", RULE);
    private static final Constant HEAD = new Constant("k", 0.25, "1", RULE);
    private static final Constant STEEL_DENSITY = new Constant("rho", 7850, "kg/m3", RULE);
    private static final Constant WORKING_STRESS = new Constant("f", 110e6, "Pa", RULE);
    private static final Constant LEAST_LITRES = new Constant("V_min", 2, "L", RULE);
    private static final Constant MOST_LITRES = new Constant("V_max", 2000, "L", RULE);
    private static final Constant MOST_BAR = new Constant("p_max", 25, "bar", RULE);

    /**
     * Checks the range.
     *
     * @param nominal nominal volume
     * @param rating rated pressure
     * @throws OutOfRangeException if the volume or the rating is outside what the estimate was made for
     */
    public ShellEstimate {
        Volume least = Volume.litres(LEAST_LITRES.value());
        Volume most = Volume.litres(MOST_LITRES.value());
        if (nominal.compareTo(least) < 0 || nominal.compareTo(most) > 0) {
            throw new OutOfRangeException(
                    "nominal volume of a shell estimate",
                    nominal.textInBothSystems(),
                    "from " + least.textInBothSystems() + " to " + most.textInBothSystems(),
                    "take the empty mass from the vessel's plate");
        }
        GaugePressure highest = GaugePressure.bar(MOST_BAR.value());
        if (rating.si() <= 0 || rating.compareTo(highest) > 0) {
            throw new OutOfRangeException(
                    "rated pressure of a shell estimate",
                    rating.textInBothSystems(),
                    "above zero and up to " + highest.textInBothSystems(),
                    "take the empty mass from the vessel's plate");
        }
    }

    /**
     * The shell's diameter.
     *
     * @return D with pi D^3 (1.1/4 + 1/12) = V
     */
    public Length diameter() {
        double cylinder = 0.5 * 0.5 * (HEIGHT.value() - 2 * HEAD.value());
        // Two half ellipsoids of depth k D are one ellipsoid: V = pi D^3 (cylinder + k / 3).
        return Length.ofSi(Math.cbrt(3 * nominal.si() / (Math.PI * (3 * cylinder + HEAD.value()))));
    }

    /**
     * The wall the estimate takes.
     *
     * @return the larger of the handling minimum and p D / (2 f)
     */
    public Length wall() {
        double forPressure = rating.si() * diameter().si() / (2 * WORKING_STRESS.value());
        return Length.ofSi(Math.max(HandlingWall.of(nominal).si(), forPressure));
    }

    /**
     * The estimated mass of the bare shell.
     *
     * @return surface x wall x density of steel
     */
    public Mass mass() {
        return Mass.ofSi(surface() * wall().si() * STEEL_DENSITY.value());
    }

    private double surface() {
        double d = diameter().si();
        double eccentricity = Math.sqrt(1 - 2 * HEAD.value() * 2 * HEAD.value());
        double artanh = 0.5 * Math.log((1 + eccentricity) / (1 - eccentricity));
        double heads = 0.5 * Math.PI * d * d * (1 + 2 * HEAD.value() * 2 * HEAD.value() / eccentricity * artanh);
        return Math.PI * d * d * (HEIGHT.value() - 2 * HEAD.value()) + heads;
    }

    /**
     * The estimate as a shell mass, with the caution that it is one.
     *
     * @return mass, source and caution
     */
    public ShellMass shellMass() {
        Caution caution = new Caution(
                "The empty mass is a rough estimate of the bare shell, without membrane, feet, flange or ring: weigh the vessel or"
                        + " take the mass on its plate.",
                RULE);
        return new ShellMass(mass(), RULE, List.of(caution));
    }

    /**
     * How the mass was reached, step by step.
     *
     * @return diameter, wall and mass
     */
    public Workings workings() {
        Step diameter = new Step(
                "diameter of a cylinder with 2:1 elliptical heads, overall height 1.6 D",
                "(V / (pi * (1.1 / 4 + 1 / 12)))^(1/3)",
                List.of(Term.of("V", nominal)),
                SupportText.term("D", diameter()),
                RULE);
        Step wall = new Step(
                "wall: the larger of the handling minimum and what the rating asks for",
                "max(t_h, p * D / (2 * f))",
                List.of(
                        SupportText.term("t_h", HandlingWall.of(nominal)),
                        Term.of("p", rating),
                        diameter.result(),
                        Term.of("f", Stress.ofSi(WORKING_STRESS.value()))),
                SupportText.term("t", wall()),
                RULE);
        Step mass = new Step(
                "mass of the bare shell, an estimate; A is its surface",
                "A * t * rho",
                List.of(
                        Term.of("A", Area.squareMetres(surface())),
                        wall.result(),
                        Term.of("rho", Density.kilogramsPerCubicMetre(STEEL_DENSITY.value()))),
                Term.of("m_0", mass()),
                RULE);
        return new Workings("Estimated shell mass", List.of(diameter, wall, mass));
    }

    /**
     * The estimate in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return "bare shell of a " + nominal.text(system) + " vessel rated " + rating.text(system) + ": about "
                + SupportText.of(mass(), system) + " (estimate: diameter " + SupportText.of(diameter(), system)
                + ", wall "
                + SupportText.of(wall(), system) + ")";
    }
}
