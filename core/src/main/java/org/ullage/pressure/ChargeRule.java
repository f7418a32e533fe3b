package org.ullage.pressure;

import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/** What the gas of a closed vessel is charged to when the caller does not say. */
public enum ChargeRule {
    /** The cold pressure at the vessel: the vessel holds no water when the loop is cold. */
    COLD_PRESSURE("cold pressure") {
        @Override
        public double pascals(double coldPascals, double ambientPascals) {
            return coldPascals;
        }

        @Override
        public Step step(AbsolutePressure cold, AbsolutePressure ambient, AbsolutePressure charge) {
            return new Step("gas charge", "p_i", List.of(Term.of("p_i", cold)), Term.of("p_0", charge), EQUAL_CHARGE);
        }
    },
    /** The air pressure: a plain tank that was full of air before it was connected. */
    ATMOSPHERIC("atmospheric pressure") {
        @Override
        public double pascals(double coldPascals, double ambientPascals) {
            return ambientPascals;
        }

        @Override
        public Step step(AbsolutePressure cold, AbsolutePressure ambient, AbsolutePressure charge) {
            return new Step("gas charge", "p_a", List.of(Term.of("p_a", ambient)), Term.of("p_0", charge), FULL_OF_AIR);
        }
    };

    private static final Source EQUAL_CHARGE = Source.secondHand(
            "ASHRAE Handbook, HVAC Systems and Equipment",
            "2000, ch. 12 eq. 14; the same in INAIL Raccolta R 2009 and UNE 100155:2004",
            "a project calculation sheet and course notes");

    private static final Source FULL_OF_AIR = Source.secondHand(
            "13 NCAC 13 .0412 (boiler rules), after ASME BPVC Section IV",
            "formula of paragraph (d)",
            "the text of the state rule");

    private final String words;

    ChargeRule(String words) {
        this.words = words;
    }

    /**
     * The usual charge of a kind of vessel.
     *
     * @param kind diaphragm, bladder or plain steel
     * @return atmospheric for plain steel, the cold pressure for the others
     */
    public static ChargeRule usualFor(VesselKind kind) {
        return kind == VesselKind.PLAIN_STEEL ? ATMOSPHERIC : COLD_PRESSURE;
    }

    /**
     * The charge on bare SI numbers.
     *
     * @param coldPascals absolute cold pressure at the vessel
     * @param ambientPascals absolute pressure of the air
     * @return absolute pascals
     */
    public abstract double pascals(double coldPascals, double ambientPascals);

    /**
     * The rule's step.
     *
     * @param cold cold pressure at the vessel
     * @param ambient pressure of the air
     * @param charge the result of {@link #pascals}
     * @return the step
     */
    public abstract Step step(AbsolutePressure cold, AbsolutePressure ambient, AbsolutePressure charge);

    /**
     * The rule in words.
     *
     * @return such as {@code cold pressure}
     */
    @Override
    public String toString() {
        return words;
    }
}
