package org.ullage.published;

import org.ullage.method.PolynomialExpansion;
import org.ullage.method.TemperatureRange;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Units;

/** Rules whose expansion is one number, because a table was made for one temperature: polynomials of degree zero. */
final class FixedExpansion {

    private FixedExpansion() {}

    /**
     * The same share whatever the temperatures are.
     *
     * @param share of the contents
     * @param range the temperatures a loop may have where they are given
     */
    static PolynomialExpansion of(Constant share, TemperatureRange range) {
        Source source = share.source();
        Constant noSlope = new Constant("c1", 0, "1/degC", source);
        Constant noSquare = new Constant("c2", 0, "1/degC2", source);
        return new PolynomialExpansion(Units.CELSIUS, share, noSlope, noSquare, range, null, source);
    }
}
