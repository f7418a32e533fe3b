package org.ullage.support;

import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.workings.Term;

/**
 * ASCE 7-22: F_p = 0.4 S_DS I_p W_p (H_f / R_mu) (C_AR / R_po). The four factors come from the standard and the building. Immutable.
 *
 * @param height height factor H_f, 1 or more
 * @param ductility structure ductility factor R_mu, 1 or more
 * @param resonance component resonance ductility factor C_AR, above zero
 * @param strength component strength factor R_po, 1 or more
 */
public record Asce722(double height, double ductility, double resonance, double strength) implements SeismicRule {

    private static final Source FORM = Source.fromMemory(
            "ASCE 7, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
            "7-22, 13.3.1, eq. 13.3-1");

    /**
     * Checks the factors.
     *
     * @param height H_f
     * @param ductility R_mu
     * @param resonance C_AR
     * @param strength R_po
     * @throws OutOfRangeException if H_f, R_mu or R_po is below 1, C_AR is not above zero, or one is not finite
     */
    public Asce722 {
        requireOneOrMore("height factor H_f", height);
        requireOneOrMore("structure ductility factor R_mu", ductility);
        Inputs.requireAbove(
                "component resonance ductility factor C_AR", resonance, 0, "see chapter 13 of the standard");
        requireOneOrMore("component strength factor R_po", strength);
    }

    private static void requireOneOrMore(String name, double factor) {
        Inputs.requireWithin(name, factor, 1, Double.MAX_VALUE, "see chapter 13 of the standard");
    }

    @Override
    public double multiplier() {
        return height / ductility * (resonance / strength);
    }

    @Override
    public String formula() {
        return "H_f / R_mu * (C_AR / R_po)";
    }

    @Override
    public List<Term> terms() {
        return List.of(
                Term.number("H_f", height),
                Term.number("R_mu", ductility),
                Term.number("C_AR", resonance),
                Term.number("R_po", strength));
    }

    @Override
    public String edition() {
        return "ASCE 7-22";
    }

    @Override
    public Source source() {
        return FORM;
    }
}
