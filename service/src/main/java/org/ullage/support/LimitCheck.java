package org.ullage.support;

import java.io.Serializable;
import org.ullage.provenance.Source;
import org.ullage.quantity.AdditiveQuantity;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/**
 * What a part carries against what it may carry. A check that fails is an answer like any other. Immutable.
 *
 * @param what what is checked, in words
 * @param actual what it carries, zero or more
 * @param allowed what it may carry, zero or more
 * @param source where the allowed value comes from
 * @param <Q> what is compared: forces, stresses, lengths or masses
 */
public record LimitCheck<Q extends AdditiveQuantity<Q, Q>>(String what, Q actual, Q allowed, Source source)
        implements Serializable {

    /**
     * Checks the signs.
     *
     * @param what what is checked
     * @param actual what it carries
     * @param allowed what it may carry
     * @param source where the allowed value comes from
     * @throws OutOfRangeException if one of the two is negative
     */
    public LimitCheck {
        Inputs.requireNotNegative(what, actual, "give its size without a sign");
        Inputs.requireNotNegative("allowed " + what, allowed, "give its size without a sign");
    }

    /**
     * The verdict.
     *
     * @return whether no more is carried than may be
     */
    public boolean passes() {
        return actual.si() <= allowed.si();
    }

    /**
     * How much of the allowed value is used.
     *
     * @return actual over allowed; 1 is the limit
     * @throws OutOfRangeException if nothing is allowed at all
     */
    public double use() {
        return actual.dividedBy(allowed);
    }

    /**
     * What is left.
     *
     * @return 1 less the {@link #use()}: negative if the check fails
     * @throws OutOfRangeException if nothing is allowed at all
     */
    public double margin() {
        return 1 - use();
    }

    /**
     * The verdict with its reason.
     *
     * @param system metric or inch-pound
     * @return one line, such as {@code bending stress: passes, 36 MPa of 103.4 MPa (34.8 %)}
     * @throws OutOfRangeException if so little is allowed that its use is no finite number of percent
     */
    public String text(UnitSystem system) {
        String share = allowed.si() > 0 ? " (" + SupportText.percent(use()) + ")" : "";
        return what + ": " + (passes() ? "passes, " : "REFUSED, ") + SupportText.of(actual, system) + " of "
                + SupportText.of(allowed, system) + share + " " + source;
    }
}
