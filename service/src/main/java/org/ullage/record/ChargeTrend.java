package org.ullage.record;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * The gas charge of one vessel over the years. Each charge is corrected to 20 degC at constant volume; a straight line is fitted to the
 * absolute charges by least squares. A setting of the charge begins a new stretch: all stretches share the slope and each has its
 * own level, so a
 * recharge is not taken for a gain. A vessel that was replaced begins anew. Immutable.
 *
 * <p>No limit is put on the loss: the figures the trade names have no document behind them. The weather moves the pressure of the
 * air, which
 * is part of the scatter.
 *
 * @param vessel name of the vessel
 * @param ambient pressure of the air at the site
 * @param points the charges in order
 * @param leftOut readings that could not be used, with the reason
 */
public record ChargeTrend(String vessel, AbsolutePressure ambient, List<ChargePoint> points, List<LeftOut> leftOut)
        implements Serializable {

    /**
     * Copies the lists.
     *
     * @param vessel name of the vessel
     * @param ambient pressure of the air
     * @param points the charges in order
     * @param leftOut readings that could not be used
     */
    public ChargeTrend {
        points = List.copyOf(points);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * The trend of a vessel.
     *
     * @param book the record
     * @param vessel name of a vessel that is there now
     * @param ambient pressure of the air at the site, such as {@link AbsolutePressure#STANDARD_ATMOSPHERE} or the one of the altitude
     * @return the trend
     * @throws OutOfRangeException if there is no such vessel, or a charge is at or below vacuum
     */
    public static ChargeTrend of(ServiceBook book, String vessel, AbsolutePressure ambient) {
        ChargeHistory history = ChargeHistory.of(book, vessel, ambient);
        return new ChargeTrend(vessel, ambient, history.points(), history.leftOut());
    }

    private CommonSlope line() {
        return CommonSlope.of(points.stream()
                .map(point -> new TrendPoint(
                        years(point.date().date()), point.corrected().si(), point.stretch()))
                .toList());
    }

    private double years(LocalDate day) {
        return TrendPoint.years(points.get(0).date().date(), day);
    }

    /**
     * The loss a year.
     *
     * @return a rate with its confidence interval if there are at least two intervals, else how many there are
     */
    public ChargeLoss loss() {
        CommonSlope line = line();
        if (!line.isEnough()) {
            return new ChargeLoss.TooFew(line.intervals());
        }
        return new ChargeLoss.Estimated(
                PressureDifference.ofSi(-line.slope()),
                PressureDifference.ofSi(-line.slope() - line.halfWidth()),
                PressureDifference.ofSi(-line.slope() + line.halfWidth()),
                line.degreesOfFreedom(),
                line.outliers().stream().map(points::get).toList());
    }

    /**
     * The day by which the charge must be checked again: when the lower end of the 95 % confidence interval of the line comes
     * down to the lowest
     * charge the caller accepts, and never later than a year after the last check.
     *
     * @param lowest lowest acceptable charge, at 20 degC
     * @return the day with its reason
     * @throws MissingInputException if no charge with its temperature was ever recorded
     */
    public NextCheck nextCheck(GaugePressure lowest) {
        if (points.isEmpty()) {
            throw new MissingInputException(
                    "a charge with the temperature of its gas", "the day of the next check", "check the charge now");
        }
        ChargePoint last = points.get(points.size() - 1);
        LocalDate from = last.date().date();
        LocalDate yearly = from.plusYears(1);
        CommonSlope line = line();
        if (last.corrected().gauge(ambient).compareTo(lowest) <= 0) {
            return new NextCheck(
                    from, "the last charge is not above " + lowest.textInBothSystems() + ": recharge", Source.given());
        }
        if (line.isEnough()) {
            for (LocalDate day = from; day.isBefore(yearly); day = day.plusDays(1)) {
                if (line.lowerEnd(last.stretch(), years(day)) <= lowest.si() + ambient.si()) {
                    return new NextCheck(
                            day,
                            "the charge may be down to " + lowest.textInBothSystems() + " then",
                            CommonSlope.SOURCE);
                }
            }
        }
        return new NextCheck(yearly, "a year after the last check", NextCheck.YEARLY);
    }

    /**
     * How the loss was reached, step by step, in bar.
     *
     * @return the corrections, and the fit if there are enough readings
     */
    public Workings workings() {
        List<Step> steps = new ArrayList<>();
        points.forEach(point -> steps.add(correction(point)));
        CommonSlope line = line();
        if (line.isEnough()) {
            steps.addAll(fit(line));
        }
        return new Workings("Charge of vessel " + PlainText.shortened(vessel), steps);
    }

    private Step correction(ChargePoint point) {
        return new Step(
                "charge of " + point.date() + (point.asLeft() ? " as left" : " as found") + ", stretch "
                        + (point.stretch() + 1) + ", at 20 degC",
                "(p + p_a) * T_20 / T",
                List.of(
                        Term.of("p", point.read()),
                        Term.of("p_a", ambient),
                        Term.in(Units.KELVIN, "T_20", ChargeCorrection.REFERENCE),
                        Term.in(Units.KELVIN, "T", point.gasTemperature())),
                Term.of("p_20", point.corrected()),
                ChargeCorrection.SOURCE);
    }

    private static List<Step> fit(CommonSlope line) {
        Term scatter = Term.number("s", bar(line.scatter()));
        Term squares = Term.number("S_xx", line.timeSquares());
        Term quantile = Term.number("t", line.quantile());
        Term products = Term.number("S_xy", bar(line.products()));
        return List.of(
                new Step(
                        "loss a year, from bar and years less the means of each stretch",
                        "-S_xy / S_xx",
                        List.of(products, squares),
                        Term.number("b", bar(-line.slope())),
                        CommonSlope.SOURCE),
                new Step(
                        "half of its 95 % confidence interval; s is the scatter of the residuals, t Student's quantile for "
                                + line.degreesOfFreedom() + " degrees of freedom",
                        "t * s / S_xx^0.5",
                        List.of(quantile, scatter, squares),
                        Term.number("d_b", bar(line.halfWidth())),
                        CommonSlope.SOURCE));
    }

    private static double bar(double pascals) {
        return PressureDifference.ofSi(pascals).in(Units.BAR);
    }

    /**
     * The trend for people: each charge as it was read and at 20 degC, what was left out, the loss and the outliers.
     *
     * @param system metric or inch-pound
     * @return lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return ChargeTrendText.of(this, system);
    }
}
