package org.ullage.fluids;

import java.util.Arrays;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.ullage.provenance.Constant;

/**
 * A. Melinder's polynomials for one glycol: density by percent by mass and temperature, freezing point by percent by mass.
 * The resource with the coefficients names source, range and how they were read. Immutable.
 */
final class MelinderPolynomial {

    /** Upper end of the concentration range, percent by mass. */
    static final double MOST_PERCENT = new Constant("x_max", 60, "mass%", GlycolSources.MELINDER).value();

    /** Upper end of the temperature range, degC. */
    static final double HIGHEST_CELSIUS = new Constant("t_max", 100, "degC", GlycolSources.MELINDER).value();

    private final NumberTable density;
    private final double basePercent;
    private final double baseCelsius;
    private final PolynomialFunction freezing;

    MelinderPolynomial(NumberTable table) {
        density = table.where("density"::equals);
        NumberTable base = table.where("base"::equals);
        basePercent = base.number(0, "C_ij");
        baseCelsius = base.number(1, "C_ij");
        freezing = new PolynomialFunction(table.where("freezing"::equals).numbers("C_ij"));
    }

    /** Freezing point in degC. */
    double freezing(double massPercent) {
        return freezing.value(massPercent - basePercent);
    }

    /** Density in kg/m3. */
    double density(double massPercent, double celsius) {
        return 1 / at(massPercent).specificVolume(celsius + Celsius.ZERO, 0);
    }

    /** The curve at a concentration: the sums over its powers are done here, a cubic in temperature remains. */
    DensityCurve at(double massPercent) {
        double[] c =
                new double[1 + (int) Arrays.stream(density.numbers("j")).max().orElseThrow()];
        for (int row = 0; row < density.size(); row++) {
            int i = (int) density.number(row, "i");
            int j = (int) density.number(row, "j");
            c[j] += density.number(row, "C_ij") * Math.pow(massPercent - basePercent, i);
        }
        return cubic(c[0], c[1], c[2], c[3], baseCelsius + Celsius.ZERO);
    }

    private static DensityCurve cubic(double c0, double c1, double c2, double c3, double baseKelvins) {
        return (kelvins, pascals) -> {
            double d = kelvins - baseKelvins;
            return 1 / (((c3 * d + c2) * d + c1) * d + c0);
        };
    }
}
