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

    private static final long serialVersionUID = 1L;

    private static final Source SOURCE = Source.computed(
            "IAPWS R7-97(2012) by the open-source library iapws 1.5.5",
            "saturated-liquid specific volume in ft3/lb, rounded to seven decimals; Akima spline between rows");

    private static final NumberTable TABLE = NumberTable.read("saturated-liquid-water.tsv");

    /** Temperatures of the rows, K. */
    private static final double[] KNOTS = Arrays.stream(TABLE.numbers("t_degF"))
            .map(number -> Temperature.fahrenheit(number).si())
            .toArray();

    /** Specific volumes of the rows, m3/kg. */
    private static final double[] VOLUMES = Arrays.stream(TABLE.numbers("vf_ft3lb"))
            .map(number -> SpecificVolume.of(number, Units.CUBIC_FOOT_PER_POUND).si())
            .toArray();

    /** The polynomial of each piece, lowest power first. */
    private static final double[][] PIECES = Arrays.stream(
                    new AkimaSplineInterpolator().interpolate(KNOTS, VOLUMES).getPolynomials())
            .map(PolynomialFunction::getCoefficients)
            .toArray(double[][]::new);

    SaturatedTableWater() {
        super(
                "saturated-liquid table",
                SOURCE,
                Temperature.ofSi(KNOTS[0]),
                Temperature.ofSi(KNOTS[KNOTS.length - 1]),
                Units.FAHRENHEIT);
    }

    @Override
    public boolean isCompressible() {
        return false;
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        requireInRange(kelvins);
        int piece = piece(kelvins);
        double[] coefficients = PIECES[piece];
        double t = kelvins - KNOTS[piece];
        double volume = 0;
        for (int power = coefficients.length - 1; power >= 0; power--) {
            volume = volume * t + coefficients[power];
        }
        return volume;
    }

    /** The piece that holds a temperature; the last row belongs to the last piece. */
    private static int piece(double kelvins) {
        int piece = KNOTS.length - 2;
        while (kelvins < KNOTS[piece]) {
            piece--;
        }
        return piece;
    }

    private Object readResolve() {
        return Water.SATURATED_TABLE;
    }
}
