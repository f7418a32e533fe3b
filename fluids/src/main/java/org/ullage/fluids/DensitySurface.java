package org.ullage.fluids;

import java.io.Serializable;
import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.interpolation.DividedDifferenceInterpolator;
import org.ullage.quantity.OutOfRangeException;

/**
 * Density against temperature at several concentrations, and the curve at a concentration between them. Immutable.
 *
 * <p>The curve at a concentration between two columns reaches over the temperatures that both columns have, never past a
 * blank. Across concentration it follows the polynomial through up to four columns that fill all those temperatures, so that
 * the same columns serve every temperature and an expansion is not spoiled by a change of support half-way. Where only the two
 * columns themselves do, the bend comes from the next column, at the nearest temperature it has.
 */
final class DensitySurface implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int MOST_SUPPORT = 4;

    /** Knots nearer than this are one knot, K. */
    private static final double SAME_KNOT = 0.01;

    /** Columns that share less than this are not interpolated between, K. */
    private static final double LEAST_OVERLAP = 1;

    private final double[] concentrations;
    private final PiecewiseCubic[] columns;

    /**
     * @param concentrations at least one, rising
     * @param columns density in kg/m3 against temperature in degC, one for each concentration
     */
    DensitySurface(double[] concentrations, PiecewiseCubic[] columns) {
        this.concentrations = concentrations.clone();
        this.columns = columns.clone();
    }

    double least() {
        return concentrations[0];
    }

    double most() {
        return concentrations[concentrations.length - 1];
    }

    /**
     * The curve at a concentration.
     *
     * @throws OutOfRangeException if the two columns beside it share no temperatures
     */
    PiecewiseCubic at(double concentration) {
        int found = Arrays.binarySearch(concentrations, concentration);
        return found >= 0 ? columns[found] : between(-found - 2, concentration);
    }

    private PiecewiseCubic between(int left, double concentration) {
        double low = Math.max(columns[left].first(), columns[left + 1].first());
        double high = Math.min(columns[left].last(), columns[left + 1].last());
        requireOverlap(left, low, high);
        double[] knots = knots(left, low, high);
        Support support = support(left, low, high);
        double[] densities = new double[knots.length];
        for (int i = 0; i < knots.length; i++) {
            densities[i] = support.size() > 2
                    ? polynomial(support, concentration, knots[i])
                    : bentLine(left, concentration, knots[i]);
        }
        return PiecewiseCubic.through(knots, densities);
    }

    private void requireOverlap(int left, double low, double high) {
        if (high - low < LEAST_OVERLAP) {
            throw new OutOfRangeException(
                    "concentration",
                    "between " + concentrations[left] + " % and " + concentrations[left + 1] + " %",
                    "between two columns of the density table that share at least " + LEAST_OVERLAP + " K",
                    "use one of the table's own concentrations");
        }
    }

    /** Columns side by side that fill all the temperatures, as many on the left as on the right where both have them. */
    private Support support(int left, double low, double high) {
        int from = left;
        int to = left + 1;
        while (to - from + 1 < MOST_SUPPORT) {
            boolean more = covers(to + 1, low, high);
            boolean less = covers(from - 1, low, high);
            if (!more && !less) {
                break;
            }
            if (more && (!less || to - left <= left - from + 1)) {
                to++;
            } else {
                from--;
            }
        }
        return new Support(from, to);
    }

    private record Support(int from, int to) {
        int size() {
            return to - from + 1;
        }
    }

    private boolean covers(int column, double low, double high) {
        return column >= 0
                && column < columns.length
                && columns[column].first() <= low
                && columns[column].last() >= high;
    }

    private double polynomial(Support support, double concentration, double celsius) {
        double[] x = Arrays.copyOfRange(concentrations, support.from(), support.to() + 1);
        double[] y = new double[x.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = columns[support.from() + i].value(celsius);
        }
        return new DividedDifferenceInterpolator().interpolate(x, y).value(concentration);
    }

    private double bentLine(int left, double concentration, double celsius) {
        double a = concentrations[left];
        double b = concentrations[left + 1];
        double part = (concentration - a) / (b - a);
        double line = columns[left].value(celsius) * (1 - part) + columns[left + 1].value(celsius) * part;
        int third = left > 0 ? left - 1 : left + 2;
        return third < columns.length
                ? line + bend(left, third, celsius) * (concentration - a) * (concentration - b)
                : line;
    }

    /** The second divided difference over two neighbours and a third column, at the nearest temperature the third has. */
    private double bend(int left, int third, double celsius) {
        double within = Math.max(columns[third].first(), Math.min(celsius, columns[third].last()));
        double slope = slope(left, left + 1, within);
        double other = slope(left, third, within);
        return (slope - other) / (concentrations[left + 1] - concentrations[third]);
    }

    private double slope(int from, int to, double celsius) {
        return (columns[to].value(celsius) - columns[from].value(celsius))
                / (concentrations[to] - concentrations[from]);
    }

    private double[] knots(int left, double low, double high) {
        double[] inside = DoubleStream.concat(
                        Arrays.stream(columns[left].knots()), Arrays.stream(columns[left + 1].knots()))
                .filter(t -> t > low + SAME_KNOT && t < high - SAME_KNOT)
                .sorted()
                .toArray();
        if (inside.length == 0) {
            return new double[] {low, (low + high) / 2, high};
        }
        double[] knots = new double[inside.length + 2];
        int count = 0;
        knots[count++] = low;
        for (double t : inside) {
            if (t - knots[count - 1] > SAME_KNOT) {
                knots[count++] = t;
            }
        }
        knots[count++] = high;
        return Arrays.copyOf(knots, count);
    }
}
