package org.ullage.support;

import java.io.Serializable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;

/**
 * Whether a mechanical component is exempt from seismic design by ASCE 7-05, 13.1.4. Later editions reworded this. Immutable.
 *
 * @param exempt whether it is
 * @param reason why, in words
 * @param source the clause
 */
public record SeismicExemption(boolean exempt, String reason, Source source) implements Serializable {

    private static final Source CLAUSE = Source.published(
            "ASCE 7, Minimum Design Loads for Buildings and Other Structures",
            "7-05, 13.1.4; 7-10 and later reworded it (from memory)");

    private static final Source CATEGORY_A = Source.fromMemory(
            "ASCE 7, Minimum Design Loads for Buildings and Other Structures", "7-05, 11.7, category A");

    private static final Constant LOW_MOUNTING = new Constant("h", 4, "ft", CLAUSE);
    private static final Constant LOW_WEIGHT = new Constant("W", 400, "lb", CLAUSE);
    private static final Constant SMALL_WEIGHT = new Constant("W", 20, "lb", CLAUSE);

    /**
     * The exemptions of ASCE 7-05.
     *
     * @param category seismic design category of the building
     * @param importance component importance factor I_p, 1.0 or 1.5
     * @param flexible whether all pipes to it have flexible connections
     * @param mounting height of its fixing above the floor
     * @param mass the waterlogged mass
     * @return exempt or not, with the reason
     */
    public static SeismicExemption asce705(
            SeismicCategory category, double importance, boolean flexible, Length mounting, Mass mass) {
        return switch (category) {
            case A -> new SeismicExemption(true, "category A", CATEGORY_A);
            case B -> new SeismicExemption(true, "category B: all mechanical components", CLAUSE);
            case C ->
                importance == 1
                        ? new SeismicExemption(true, "category C with I_p = 1.0", CLAUSE)
                        : new SeismicExemption(false, "category C with I_p above 1.0", CLAUSE);
            case D, E, F -> high(importance, flexible, mounting, mass);
        };
    }

    private static SeismicExemption high(double importance, boolean flexible, Length mounting, Mass mass) {
        if (importance != 1) {
            return new SeismicExemption(false, "category D to F with I_p above 1.0", CLAUSE);
        }
        if (!flexible) {
            return new SeismicExemption(false, "category D to F without flexible connections", CLAUSE);
        }
        if (mass.compareTo(Mass.pounds(SMALL_WEIGHT.value())) <= 0) {
            return new SeismicExemption(true, "up to 20 lb (9.07 kg) with flexible connections", CLAUSE);
        }
        boolean low = mounting.compareTo(Length.feet(LOW_MOUNTING.value())) <= 0
                && mass.compareTo(Mass.pounds(LOW_WEIGHT.value())) <= 0;
        return low
                ? new SeismicExemption(
                        true,
                        "up to 4 ft (1.22 m) above the floor and 400 lb (181 kg) with flexible connections",
                        CLAUSE)
                : new SeismicExemption(false, "category D to F, above 4 ft (1.22 m) or 400 lb (181 kg)", CLAUSE);
    }
}
