package org.ullage.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;

/**
 * Ordinary least squares with one slope for all stretches and a level for each, as in an analysis of covariance: the means of each stretch
 * are taken off, and a line through the origin is fitted to what is left. With N points in S stretches N - S - 1 degrees of
 * freedom remain. For
 * one stretch this is the usual straight line; for stretches of two points it is the loss between a charge as left and the next as found.
 */
final class CommonSlope {

    /** Where the method is described. */
    static final Source SOURCE = Source.fromMemory(
            "NIST/SEMATECH e-Handbook of Statistical Methods",
            "sec. 4.1.4.1, linear least squares; one level a stretch");

    static final Constant CONFIDENCE =
            new Constant("P", 0.95, "1", Source.commonPractice("usual level of confidence, two-sided"));

    /** The largest of N studentised residuals against a t quantile at a level divided by N, as Grubbs does for a mean. */
    static final Source OUTLIER_RULE = Source.fromMemory(
            "NIST/SEMATECH e-Handbook of Statistical Methods",
            "sec. 1.3.5.17.1, Grubbs' test, carried over to the residuals of a line");

    /** Residuals this small against the values are rounding. */
    private static final double ROUNDING = 1e-9;

    private final List<TrendPoint> points;
    private final Map<Integer, List<TrendPoint>> stretches;
    private final SimpleRegression line = new SimpleRegression(false);

    private CommonSlope(List<TrendPoint> points) {
        this.points = points;
        this.stretches =
                points.stream().collect(Collectors.groupingBy(TrendPoint::stretch, TreeMap::new, Collectors.toList()));
        points.forEach(point -> line.addData(time(point), height(point)));
    }

    static CommonSlope of(List<TrendPoint> points) {
        return new CommonSlope(List.copyOf(points));
    }

    private List<TrendPoint> stretch(int number) {
        return stretches.getOrDefault(number, List.of());
    }

    private double meanTime(int stretch) {
        return mean(stretch(stretch).stream().mapToDouble(TrendPoint::years).toArray());
    }

    private double meanValue(int stretch) {
        return mean(stretch(stretch).stream().mapToDouble(TrendPoint::value).toArray());
    }

    private static double mean(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum / numbers.length;
    }

    private double time(TrendPoint point) {
        return point.years() - meanTime(point.stretch());
    }

    private double height(TrendPoint point) {
        return point.value() - meanValue(point.stretch());
    }

    /** Differences between points of one stretch: each is an interval with a change. */
    int intervals() {
        return points.size() - stretches.size();
    }

    int degreesOfFreedom() {
        return intervals() - 1;
    }

    /** Whether a slope and its uncertainty can be told. */
    boolean isEnough() {
        return degreesOfFreedom() > 0 && timeSquares() > 0;
    }

    /** S_xx. */
    double timeSquares() {
        return line.getXSumSquares();
    }

    /** S_xy. */
    double products() {
        return line.getSumOfCrossProducts();
    }

    double slope() {
        return line.getSlope();
    }

    /** Standard deviation of the residuals. */
    double scatter() {
        return Math.sqrt(line.getSumSquaredErrors() / degreesOfFreedom());
    }

    /** Quantile of Student's t for the confidence. */
    double quantile() {
        return quantile((1 + CONFIDENCE.value()) / 2, degreesOfFreedom());
    }

    private static double quantile(double probability, int degreesOfFreedom) {
        return new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(probability);
    }

    /** Half of the confidence interval of the slope. */
    double halfWidth() {
        return quantile() * scatter() / Math.sqrt(timeSquares());
    }

    /** Lower end of the confidence interval of the line of a stretch. */
    double lowerEnd(int stretch, double years) {
        double away = years - meanTime(stretch);
        double share = 1.0 / stretch(stretch).size() + away * away / timeSquares();
        return meanValue(stretch) + slope() * away - quantile() * scatter() * Math.sqrt(share);
    }

    /** Places of the points whose residual is too large for chance. */
    List<Integer> outliers() {
        int left = degreesOfFreedom() - 1;
        if (left < 1) {
            return List.of();
        }
        double limit = quantile(1 - (1 - CONFIDENCE.value()) / (2 * points.size()), left);
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < points.size(); place++) {
            if (isOutlier(points.get(place), left, limit)) {
                places.add(place);
            }
        }
        return places;
    }

    private boolean isOutlier(TrendPoint point, int left, double limit) {
        double away = time(point);
        double residual = height(point) - slope() * away;
        double free = 1 - 1.0 / stretch(point.stretch()).size() - away * away / timeSquares();
        if (Math.abs(residual) <= ROUNDING * Math.abs(point.value()) || free <= ROUNDING) {
            return false;
        }
        double studentised = residual * residual / (scatter() * scatter() * free);
        double others = degreesOfFreedom() - studentised;
        return others <= 0 || studentised * left / others > limit * limit;
    }
}
