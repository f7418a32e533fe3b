package org.ullage.pressure;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/**
 * What the gas of a closed vessel is charged to when the caller does not say. Immutable.
 *
 * @param reference the pressure it follows
 * @param below how far it stays below that pressure
 * @param source where the rule comes from
 */
public record ChargeRule(Reference reference, PressureDifference below, Source source) implements Serializable {

    /** The pressure a charge follows. */
    public enum Reference {
        /** The cold pressure at the vessel. */
        COLD_PRESSURE("cold pressure"),
        /** The air pressure. */
        ATMOSPHERE("atmospheric pressure");

        private final String words;

        Reference(String words) {
            this.words = words;
        }
    }

    /** Equal to the cold pressure: the vessel holds no water when the loop is cold. */
    public static final ChargeRule COLD_PRESSURE = new ChargeRule(
            Reference.COLD_PRESSURE,
            PressureDifference.bar(0),
            Source.secondHand(
                    "ASHRAE Handbook, HVAC Systems and Equipment",
                    "2000, ch. 12 eq. 14; the same in INAIL Raccolta R 2009 and UNE 100155:2004",
                    "a project calculation sheet and course notes"));

    /** Atmospheric: a plain tank that was full of air before it was connected. */
    public static final ChargeRule ATMOSPHERIC = new ChargeRule(
            Reference.ATMOSPHERE,
            PressureDifference.bar(0),
            Source.secondHand(
                    "13 NCAC 13 .0412 (boiler rules), after ASME BPVC Section IV",
                    "formula of paragraph (d)",
                    "the text of the state rule"));

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
     * A charge below the cold pressure, so that the vessel holds water when the loop is cold.
     *
     * @param difference how far below
     * @param source where the rule comes from
     * @return the rule
     */
    public static ChargeRule belowColdPressure(PressureDifference difference, Source source) {
        return new ChargeRule(Reference.COLD_PRESSURE, difference, source);
    }

    /**
     * The charge on bare SI numbers.
     *
     * @param coldPascals absolute cold pressure at the vessel
     * @param ambientPascals absolute pressure of the air
     * @return absolute pascals
     */
    public double pascals(double coldPascals, double ambientPascals) {
        return (reference == Reference.COLD_PRESSURE ? coldPascals : ambientPascals) - below.si();
    }

    /**
     * The rule's step.
     *
     * @param cold cold pressure at the vessel
     * @param ambient pressure of the air
     * @param charge the result of {@link #pascals}
     * @return the step
     */
    public Step step(AbsolutePressure cold, AbsolutePressure ambient, AbsolutePressure charge) {
        Term followed = reference == Reference.COLD_PRESSURE ? Term.of("p_i", cold) : Term.of("p_a", ambient);
        Term result = Term.of("p_0", charge);
        return below.si() == 0
                ? new Step("gas charge", followed.symbol(), List.of(followed), result, source)
                : new Step(
                        "gas charge",
                        followed.symbol() + " - d_0",
                        List.of(followed, Term.of("d_0", below)),
                        result,
                        source);
    }

    /**
     * The rule in words.
     *
     * @return such as {@code cold pressure}
     */
    @Override
    public String toString() {
        return below.si() == 0 ? reference.words : reference.words + " - " + below.text(Units.BAR);
    }
}
