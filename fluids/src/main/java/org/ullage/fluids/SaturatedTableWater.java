package org.ullage.fluids;

import java.util.Arrays;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.ullage.provenance.Source;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/**
 * Saturated liquid water from a table of specific volume, interpolated.
 *
 * <p>An Akima spline is local and assumes nothing about the ends. A natural cubic spline sets the curvature at the ends to
 * zero, where the table has some, and straight lines lie above a curve that bends upwards.
 */
final class SaturatedTableWater extends WaterModel {

    private static final Source SOURCE = Source.computed(
            "IAPWS R7-97(2012) by the open-source library iapws 1.5.5",
            "saturated-liquid specific volume in ft3/lb, rounded to seven digits; Akima spline between rows");

    private static final int COEFFICIENTS_PER_PIECE = 4;

    private final double[] knots;
    private final double[] coefficients;

    SaturatedTableWater() {
        this(WaterTable.read("saturated-liquid-water.tsv"));
    }

    private SaturatedTableWater(WaterTable table) {
        this(table.column(0), table.column(1));
    }

    private SaturatedTableWater(double[] fahrenheits, double[] cubicFeetPerPound) {
        super(
                "saturated-liquid table",
                SOURCE,
                Temperature.fahrenheit(fahrenheits[0]),
                Temperature.fahrenheit(fahrenheits[fahrenheits.length - 1]),
                Units.FAHRENHEIT);
        knots = Arrays.stream(fahrenheits)
                .map(number -> Temperature.fahrenheit(number).si())
                .toArray();
        coefficients = spline(
                knots,
                Arrays.stream(cubicFeetPerPound)
                        .map(number -> SpecificVolume.of(number, Units.CUBIC_FOOT_PER_POUND).si())
                        .toArray());
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        int piece = piece(kelvins);
        double t = kelvins - knots[piece];
        int first = piece * COEFFICIENTS_PER_PIECE;
        double quadratic = coefficients[first + 2] + t * coefficients[first + 3];
        return coefficients[first] + t * (coefficients[first + 1] + t * quadratic);
    }

    /** The piece that holds a temperature; the last row belongs to the last piece. */
    private int piece(double kelvins) {
        int piece = knots.length - 2;
        while (kelvins < knots[piece]) {
            piece--;
        }
        return piece;
    }

    /** The cubic of each piece, lowest power first, one after the other so that look-up needs no object. */
    private static double[] spline(double[] x, double[] y) {
        PolynomialFunction[] pieces =
                new AkimaSplineInterpolator().interpolate(x, y).getPolynomials();
        return Arrays.stream(pieces)
                .flatMapToDouble(
                        piece -> Arrays.stream(Arrays.copyOf(piece.getCoefficients(), COEFFICIENTS_PER_PIECE)))
                .toArray();
    }
}
