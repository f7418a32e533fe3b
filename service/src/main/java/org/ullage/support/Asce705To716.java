package org.ullage.support;

import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.workings.Term;

/**
 * ASCE 7-05, 7-10 and 7-16: F_p = 0.4 a_p S_DS W_p (1 + 2 z/h) / (R_p / I_p). Immutable.
 *
 * @param amplification component amplification factor a_p, 1 to 2.5
 * @param response component response modification factor R_p, 1 to 12
 * @param height place in the building z/h: 0 at grade, 1 at the roof
 */
public record Asce705To716(double amplification, double response, double height) implements SeismicRule {

    private static final Source FORM = Source.secondHand(
            "ASCE 7, Minimum Design Loads for Buildings and Other Structures",
            "7-05 to 7-16, 13.3.1, eq. 13.3-1",
            "an open code page, which prints it as 7-22");

    private static final Source TABLE = Source.fromMemory(
            "ASCE 7, Minimum Design Loads for Buildings and Other Structures",
            "7-05 to 7-16, Table 13.6-1: boilers, tanks, pressure vessels not on skirts, other wet-side equipment");

    private static final Constant ISOLATED = new Constant("a_p", 2.5, "1", TABLE);

    private static final Constant WET_SIDE = new Constant("R_p", 2.5, "1", TABLE);

    private static final Constant MOST_DUCTILE = new Constant("R_p,max", 12, "1", TABLE);

    /**
     * Checks the factors.
     *
     * @param amplification a_p
     * @param response R_p
     * @param height z/h
     * @throws OutOfRangeException if a_p is not from 1 to 2.5, R_p not from 1 to 12 or z/h not from 0 to 1
     */
    public Asce705To716 {
        Inputs.requireWithin(
                "component amplification factor a_p", amplification, 1, ISOLATED.value(), "see Table 13.6-1");
        Inputs.requireWithin("component response factor R_p", response, 1, MOST_DUCTILE.value(), "see Table 13.6-1");
        Inputs.requireWithin("place in the building z/h", height, 0, 1, "0 is at grade or below, 1 at the roof");
    }

    /**
     * A vessel on a rigid base: a_p = 1.0, R_p = 2.5.
     *
     * @param height place in the building z/h, 0 to 1
     * @return the rule
     * @throws OutOfRangeException if z/h is not from 0 to 1
     */
    public static Asce705To716 vessel(double height) {
        return new Asce705To716(1, WET_SIDE.value(), height);
    }

    /**
     * A vessel on vibration isolators: a_p = 2.5, R_p = 2.5.
     *
     * @param height place in the building z/h, 0 to 1
     * @return the rule
     * @throws OutOfRangeException if z/h is not from 0 to 1
     */
    public static Asce705To716 vesselOnIsolators(double height) {
        return new Asce705To716(ISOLATED.value(), WET_SIDE.value(), height);
    }

    @Override
    public double multiplier() {
        return amplification * (1 + 2 * height) / response;
    }

    @Override
    public String formula() {
        return "a_p * (1 + 2 * z_h) / R_p";
    }

    @Override
    public List<Term> terms() {
        return List.of(Term.number("a_p", amplification), Term.number("z_h", height), Term.number("R_p", response));
    }

    @Override
    public String edition() {
        return "ASCE 7-05 to 7-16";
    }

    @Override
    public Source source() {
        return FORM;
    }
}
