package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Digits;
import org.ullage.quantity.Force;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * The horizontal force of an earthquake on a vessel, at its centre of gravity: F_p = 0.4 S_DS I_p W_p x by the form of an edition, not
 * below 0.3 S_DS I_p W_p and not above 1.6 S_DS I_p W_p. Immutable.
 *
 * @param rule the form, with the factors of component and place
 * @param mass what shakes: the waterlogged mass
 * @param groundMotion design spectral acceleration S_DS in units of gravity, above zero
 * @param importance component importance factor I_p: 1.5 for life safety, hazardous content or an essential facility, otherwise 1.0
 */
public record SeismicForce(SeismicRule rule, Mass mass, double groundMotion, double importance)
        implements Serializable {

    private static final Source BOUNDS = Source.fromMemory(
            "ASCE 7, Minimum Design Loads for Buildings and Other Structures",
            "13.3.1, eqs. 13.3-2 and 13.3-3: the same in 7-05 to 7-22");

    private static final Source IMPORTANCE =
            Source.published("ASCE 7, Minimum Design Loads for Buildings and Other Structures", "7-05, 13.1.3");

    private static final Constant FACTOR = new Constant("0.4", 0.4, "1", BOUNDS);
    private static final Constant LOWER = new Constant("0.3", 0.3, "1", BOUNDS);
    private static final Constant UPPER = new Constant("1.6", 1.6, "1", BOUNDS);
    private static final Constant LIFE_SAFETY = new Constant("I_p", 1.5, "1", IMPORTANCE);

    private static final int DIGITS = 3;

    /** What decides the force. */
    public enum Governing {
        /** The formula. */
        FORMULA,
        /** The lower bound, 0.3 S_DS I_p W_p. */
        LOWER_BOUND,
        /** The upper bound, 1.6 S_DS I_p W_p. */
        UPPER_BOUND
    }

    /**
     * Checks the factors.
     *
     * @param rule the form
     * @param mass what shakes
     * @param groundMotion S_DS
     * @param importance I_p
     * @throws OutOfRangeException if S_DS is not above zero and finite, or I_p neither 1.0 nor 1.5
     */
    public SeismicForce {
        Inputs.requirePositive("mass that shakes", mass, "take the waterlogged mass of the vessel");
        Inputs.requireAbove("S_DS", groundMotion, 0, "take it from the seismic data of the site");
        if (importance != 1 && importance != LIFE_SAFETY.value()) {
            throw new OutOfRangeException(
                    "component importance factor I_p",
                    Double.toString(importance),
                    "1.0 or " + LIFE_SAFETY.value(),
                    "take " + LIFE_SAFETY.value() + " for life safety, hazardous content or an essential facility");
        }
    }

    /**
     * The force as a part of the weight.
     *
     * @return F_p / W_p
     */
    public double coefficient() {
        return Math.min(upper(), Math.max(lower(), byFormula()));
    }

    private double byFormula() {
        return FACTOR.value() * groundMotion * importance * rule.multiplier();
    }

    private double lower() {
        return LOWER.value() * groundMotion * importance;
    }

    private double upper() {
        return UPPER.value() * groundMotion * importance;
    }

    /**
     * What decides the force.
     *
     * @return formula or bound
     */
    public Governing governing() {
        if (byFormula() < lower()) {
            return Governing.LOWER_BOUND;
        }
        return byFormula() > upper() ? Governing.UPPER_BOUND : Governing.FORMULA;
    }

    /**
     * The horizontal force at the centre of gravity, any direction.
     *
     * @return coefficient x weight
     */
    public Force force() {
        return mass.weight().times(coefficient());
    }

    /**
     * What the reader must know.
     *
     * @return cautions
     */
    public List<Caution> cautions() {
        return List.of(
                SupportCautions.ENGINEER,
                SupportCautions.WATERLOGGED,
                new Caution(
                        "A design force at strength level: it goes with load combinations, the vertical seismic force and, for"
                                + " anchors in concrete, an overstrength factor that are not in this check. The adopted code"
                                + " decides the edition.",
                        BOUNDS));
    }

    /**
     * How the force was reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        Term motion = Term.number("S_DS", groundMotion);
        Term factor = Term.number("I_p", importance);
        Step multiplier = new Step(
                "place and kind of the component, " + rule.edition(),
                rule.formula(),
                rule.terms(),
                Term.number("x", rule.multiplier()),
                rule.source());
        Step formula = share(
                "by the formula",
                "0.4 * S_DS * I_p * x",
                List.of(motion, factor, multiplier.result()),
                "c_f",
                byFormula());
        Step lower = share("lower bound", "0.3 * S_DS * I_p", List.of(motion, factor), "c_min", lower());
        Step upper = share("upper bound", "1.6 * S_DS * I_p", List.of(motion, factor), "c_max", upper());
        Step share = share(
                "decided by the " + governingWords(),
                "min(c_max, max(c_min, c_f))",
                List.of(upper.result(), lower.result(), formula.result()),
                "c",
                coefficient());
        Step force = new Step(
                "horizontal force at the centre of gravity",
                "c * W_p",
                List.of(share.result(), Term.of("W_p", mass.weight())),
                Term.of("F_p", force()),
                rule.source());
        List<Step> steps = List.of(multiplier, formula, lower, upper, share, force);
        return new Workings("Seismic force on a vessel by " + rule.edition(), steps);
    }

    private static Step share(String meaning, String formula, List<Term> terms, String symbol, double value) {
        return new Step(
                "force as a part of the weight, " + meaning, formula, terms, Term.number(symbol, value), BOUNDS);
    }

    private String governingWords() {
        return switch (governing()) {
            case FORMULA -> "formula";
            case LOWER_BOUND -> "lower bound";
            case UPPER_BOUND -> "upper bound";
        };
    }

    /**
     * The force in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return "seismic force by " + rule.edition() + ": " + SupportText.of(force(), system) + ", "
                + Digits.significant(coefficient(), DIGITS) + " of the weight, decided by the " + governingWords();
    }
}
