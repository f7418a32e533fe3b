package org.ullage.fluids;

import java.io.Serializable;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A smooth curve through points, held as plain arrays of cubic coefficients so that looking it up allocates nothing. Immutable.
 *
 * <p>Through five points or more it is an Akima spline, which follows a parabola exactly and does not let one point disturb
 * the curve far away (H. Akima, J. ACM 17 (1970) 589-602); through three or four, a natural cubic spline.
 */
final class PiecewiseCubic implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int FEWEST_FOR_AKIMA = 5;
    private static final int TERMS = 4;

    /**
     * A knot this near to the start of a bucket counts as its start, so that rounding does not cost a step at every look-up. The
     * curve is smooth: so near to a knot either cubic will do.
     */
    private static final double TOUCHING = 1e-9;

    /** Keeps the index small when two knots nearly touch. */
    private static final int MOST_BUCKETS = 1024;

    private final double[] knots;
    private final double[] coefficients;
    private final int[] firstSegment;
    private final double perBucket;

    private PiecewiseCubic(double[] knots, double[] coefficients) {
        this.knots = knots;
        this.coefficients = coefficients;
        double range = knots[knots.length - 1] - knots[0];
        int buckets = (int) Math.min(MOST_BUCKETS, Math.ceil(range / narrowest(knots)));
        this.perBucket = buckets / range;
        this.firstSegment = firstSegments(knots, buckets, perBucket);
    }

    /**
     * @param x at least three abscissas, rising
     * @param y the ordinates
     */
    static PiecewiseCubic through(double[] x, double[] y) {
        PolynomialSplineFunction spline = x.length < FEWEST_FOR_AKIMA
                ? new SplineInterpolator().interpolate(x, y)
                : new AkimaSplineInterpolator().interpolate(x, y);
        PolynomialFunction[] pieces = spline.getPolynomials();
        double[] coefficients = new double[TERMS * pieces.length];
        for (int i = 0; i < pieces.length; i++) {
            double[] piece = pieces[i].getCoefficients();
            System.arraycopy(piece, 0, coefficients, TERMS * i, piece.length);
        }
        return new PiecewiseCubic(spline.getKnots(), coefficients);
    }

    /** The curve at x; outside the knots the first or last cubic goes on, so callers check the range. */
    double value(double x) {
        int segment = segment(x);
        double d = x - knots[segment];
        int constant = TERMS * segment;
        int cube = constant + TERMS - 1;
        return ((coefficients[cube] * d + coefficients[cube - 1]) * d + coefficients[cube - 2]) * d
                + coefficients[constant];
    }

    double first() {
        return knots[0];
    }

    double last() {
        return knots[knots.length - 1];
    }

    double[] knots() {
        return knots.clone();
    }

    /** Equal buckets about as wide as the narrowest segment lead to the right segment in a step or two. */
    private int segment(double x) {
        int bucket = (int) ((x - knots[0]) * perBucket);
        int segment = firstSegment[Math.max(0, Math.min(bucket, firstSegment.length - 1))];
        while (segment + 2 < knots.length && x >= knots[segment + 1]) {
            segment++;
        }
        return segment;
    }

    private static double narrowest(double[] knots) {
        double width = Double.POSITIVE_INFINITY;
        for (int i = 1; i < knots.length; i++) {
            width = Math.min(width, knots[i] - knots[i - 1]);
        }
        return width;
    }

    private static int[] firstSegments(double[] knots, int buckets, double perBucket) {
        int[] segments = new int[buckets];
        int segment = 0;
        for (int bucket = 0; bucket < buckets; bucket++) {
            while (segment + 2 < knots.length && knots[segment + 1] <= knots[0] + bucket / perBucket + TOUCHING) {
                segment++;
            }
            segments[bucket] = segment;
        }
        return segments;
    }
}
