package org.ullage.fluids;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.ullage.provenance.Constant;

/**
 * Joins the ASHRAE density rows up to 100 degC, printed to 0.01 kg/m3, with the coarser ones above.
 *
 * <p>Up to 100 degC the printed numbers are used as they are, apart from the corrections. Above, rows with four digits would
 * put steps of up to 0.5 kg/m3 into the curve. Every column is a parabola in temperature to 0.006 kg/m3 up to 100 degC, and
 * that parabola meets the coarse rows within their rounding, so each coarse row takes the value nearest to its column's
 * parabola that still rounds to the printed number.
 */
final class AshraeTable {

    /** The row at 100 degC stands in both parts; the one with more digits counts. */
    private static final double COARSE_ABOVE = new Constant("t", 100, "degC", GlycolSources.ASHRAE_DENSITY).value();

    /** From one column to the next, percent by volume. */
    static final double COLUMN_STEP = new Constant("step", 10, "vol%", GlycolSources.ASHRAE_DENSITY).value();

    /** Four significant digits: the last is a unit from here up and a tenth below. */
    private static final double COARSE_FROM = new Constant("rho", 1000, "kg/m3", GlycolSources.ASHRAE_DENSITY).value();

    private final NumberTable fine;
    private final NumberTable coarse;
    private final List<Correction> corrections;

    /** A cell that is not used as found. Temperature in degC, percent by volume, kg/m3. */
    record Correction(double celsius, double percent, double asFound, double asUsed) {}

    AshraeTable(NumberTable fine, NumberTable coarse, List<Correction> corrections) {
        this.fine = fine;
        this.coarse = coarse;
        this.corrections = List.copyOf(corrections);
    }

    DensitySurface surface() {
        List<String> names = fine.names().subList(1, fine.names().size());
        double[] percents = new double[names.size()];
        PiecewiseCubic[] columns = new PiecewiseCubic[percents.length];
        for (int i = 0; i < percents.length; i++) {
            String name = names.get(i);
            percents[i] = Double.parseDouble(name.substring(1));
            columns[i] = column(name, percents[i]);
        }
        return new DensitySurface(percents, columns);
    }

    private PiecewiseCubic column(String name, double percent) {
        List<double[]> points = finePoints(name, percent);
        WeightedObservedPoints observed = new WeightedObservedPoints();
        points.forEach(point -> observed.add(point[0], point[1]));
        PolynomialFunction parabola =
                new PolynomialFunction(PolynomialCurveFitter.create(2).fit(observed.toList()));
        for (int row = 0; row < coarse.size(); row++) {
            double celsius = coarse.number(row, "t_degC");
            if (celsius > COARSE_ABOVE) {
                points.add(new double[] {celsius, unrounded(parabola.value(celsius), coarse.number(row, name))});
            }
        }
        return PiecewiseCubic.through(
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray());
    }

    private List<double[]> finePoints(String name, double percent) {
        List<double[]> points = new ArrayList<>();
        for (int row = 0; row < fine.size(); row++) {
            double celsius = fine.number(row, "t_degC");
            double density = fine.number(row, name);
            if (!Double.isNaN(density)) {
                points.add(new double[] {celsius, corrected(celsius, percent, density)});
            }
        }
        return points;
    }

    private double corrected(double celsius, double percent, double found) {
        return corrections.stream()
                .filter(c -> c.celsius() == celsius && c.percent() == percent && c.asFound() == found)
                .findFirst()
                .map(Correction::asUsed)
                .orElse(found);
    }

    private static double unrounded(double smooth, double printed) {
        double half = 0.5 * (printed >= COARSE_FROM ? 1 : 0.1);
        return Math.max(printed - half, Math.min(smooth, printed + half));
    }
}
