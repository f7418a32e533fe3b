package org.ullage.uncertainty;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/** The clauses this package follows, and the divisors they give. */
final class Gum {

    private static final String GUIDE = "JCGM 100:2008, Guide to the expression of uncertainty in measurement";
    private static final String SUPPLEMENT = "JCGM 101:2008, Propagation of distributions using a Monte Carlo method";

    static final Source STATED = Source.fromMemory(GUIDE, "4.3.3, a stated standard uncertainty");
    static final Source UNIFORM = Source.fromMemory(GUIDE, "4.3.7, bounds without a preferred value");
    static final Source TRIANGULAR = Source.fromMemory(GUIDE, "4.3.9, bounds with a preferred value");
    static final Source PROPAGATION = Source.fromMemory(GUIDE, "5.1.2 and 5.2.2, law of propagation of uncertainty");
    static final Source MONTE_CARLO = Source.fromMemory(SUPPLEMENT, "clause 7");

    /** Square of what half the width of a uniform distribution is divided by: u = a / sqrt(3). */
    static final double UNIFORM_DIVISOR_SQUARED = new Constant("k^2", 3, "1", UNIFORM).value();

    /**
     * u^2 = (a^2 + b^2 + c^2 - ab - ac - bc) / 18 for lowest a, highest b and most likely c; symmetric, with half width h, this is
     * h^2 / 6.
     */
    static final double TRIANGULAR_DIVISOR = new Constant(
                    "18", 18, "1", Source.computed("second moment of the triangular density", "4.3.9 for any mode"))
            .value();

    private Gum() {}
}
