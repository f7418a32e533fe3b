package org.ullage.charge;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.GasLaw;

/**
 * How far off a charge may be before one acts on it. A gauge can decide only if its error is no larger. Immutable.
 *
 * @param limit above zero
 * @param source who says so
 */
public record GaugeTolerance(PressureDifference limit, Source source) implements Serializable {

    /** 0.1 bar (1.45 psi): what a charge is usually set to within. */
    public static final GaugeTolerance USUAL = new GaugeTolerance(
            PressureDifference.bar(0.1), Source.commonPractice("a charge is set to within 0.1 bar or 1.5 psi"));

    /**
     * Checks the limit.
     *
     * @param limit above zero
     * @param source who says so
     * @throws OutOfRangeException if the limit is not above zero
     */
    public GaugeTolerance {
        if (limit.si() <= 0) {
            throw new OutOfRangeException(
                    "tolerance of the charge",
                    limit.textInBothSystems(),
                    "above zero",
                    "give what difference would make you act");
        }
    }

    /**
     * The caller's own tolerance.
     *
     * @param limit above zero
     * @return the tolerance
     * @throws OutOfRangeException if the limit is not above zero
     */
    public static GaugeTolerance of(PressureDifference limit) {
        return new GaugeTolerance(limit, Source.given());
    }

    /**
     * Whether a difference is small enough to leave alone.
     *
     * @param difference either way
     * @return whether it is within the limit
     */
    public boolean holds(PressureDifference difference) {
        return !GasLaw.isAbove(Math.abs(difference.si()), limit.si());
    }

    /**
     * The tolerance for people.
     *
     * @param system metric or inch-pound
     * @return with who says so
     */
    public String text(UnitSystem system) {
        return limit.text(system) + " " + source;
    }
}
