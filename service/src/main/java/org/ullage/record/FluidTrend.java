package org.ullage.record;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ullage.condition.SampleQuantity;

/**
 * One measured quantity of the fluid over the years, such as pH. A straight line is fitted by least squares; a treatment of the
 * fluid begins
 * a new stretch with its own level, as in {@link ChargeTrend}. The fill water is not counted: it is not yet the fluid of the
 * loop. Immutable.
 *
 * @param quantity what was measured
 * @param points the samples in order
 */
public record FluidTrend(SampleQuantity quantity, List<SamplePoint> points) implements Serializable {

    /**
     * Copies the list.
     *
     * @param quantity what was measured
     * @param points the samples in order
     */
    public FluidTrend {
        points = List.copyOf(points);
    }

    /**
     * The trend of a quantity.
     *
     * @param book the record
     * @param quantity what was measured
     * @return the trend
     */
    public static FluidTrend of(ServiceBook book, SampleQuantity quantity) {
        List<SamplePoint> points = new ArrayList<>();
        int stretch = 0;
        for (VisitRecord visit : book.visits()) {
            SampleNote sample = visit.sample();
            for (SampleReading reading : sample == null ? List.<SampleReading>of() : sample.readings()) {
                if (reading.quantity() == quantity) {
                    points.add(new SamplePoint(visit.date(), reading.value(), stretch));
                }
            }
            if (visit.fluidTreatment() != null) {
                stretch++;
            }
        }
        return new FluidTrend(quantity, points);
    }

    /**
     * The change a year.
     *
     * @return a rate with its confidence interval if there are at least two intervals, else how many there are
     */
    public FluidChange change() {
        CommonSlope line = CommonSlope.of(points.stream()
                .map(point -> new TrendPoint(
                        TrendPoint.years(
                                points.get(0).date().date(), point.date().date()),
                        point.value().number(),
                        point.stretch()))
                .toList());
        if (!line.isEnough()) {
            return new FluidChange.TooFew(quantity, line.intervals());
        }
        return new FluidChange.Estimated(
                quantity,
                line.slope(),
                line.slope() - line.halfWidth(),
                line.slope() + line.halfWidth(),
                line.degreesOfFreedom(),
                line.outliers().stream().map(points::get).toList());
    }

    /**
     * The trend for people.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        StringBuilder text = new StringBuilder("Fluid: " + quantity.word() + "\n");
        points.forEach(point -> text.append("  ").append(point.text()).append('\n'));
        FluidChange change = change();
        text.append("  ").append(change.text()).append('\n');
        if (change instanceof FluidChange.Estimated estimated) {
            estimated
                    .outliers()
                    .forEach(point -> text.append("  far from the line, look for the cause: ")
                            .append(point.text())
                            .append(' ')
                            .append(CommonSlope.OUTLIER_RULE)
                            .append('\n'));
        }
        return text.toString();
    }
}
