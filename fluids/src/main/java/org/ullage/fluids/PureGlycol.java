package org.ullage.fluids;

import java.io.Serializable;

/**
 * Density and vapour pressure of a glycol without water, by the DIPPR equations 105 and 101. The resource with the constants
 * names their source. SI units. Immutable.
 */
final class PureGlycol implements Serializable {

    private static final long serialVersionUID = 1L;

    private final double molarMass;
    private final double c1;
    private final double c2;
    private final double c3;
    private final double c4;
    private final double p1;
    private final double p2;
    private final double p3;
    private final double p4;
    private final double p5;

    PureGlycol(NumberTable table) {
        molarMass = table.number(0, "M");
        c1 = table.number(0, "C1");
        c2 = table.number(0, "C2");
        c3 = table.number(0, "C3");
        c4 = table.number(0, "C4");
        p1 = table.number(0, "P1");
        p2 = table.number(0, "P2");
        p3 = table.number(0, "P3");
        p4 = table.number(0, "P4");
        p5 = table.number(0, "P5");
    }

    /** In kg/kmol. */
    double molarMass() {
        return molarMass;
    }

    /** In kg/m3, DIPPR equation 105. */
    double density(double kelvins) {
        return molarMass * c1 / Math.pow(c2, 1 + Math.pow(1 - kelvins / c3, c4));
    }

    /** In Pa, DIPPR equation 101. */
    double vapourPressure(double kelvins) {
        return Math.exp(p1 + p2 / kelvins + p3 * Math.log(kelvins) + p4 * Math.pow(kelvins, p5));
    }
}
