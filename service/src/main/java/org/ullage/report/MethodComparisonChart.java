package org.ullage.report;

import org.ullage.comparison.MethodComparison;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** Draws what several methods require for one job, each held against what the mass balance allows. */
public final class MethodComparisonChart {

    private MethodComparisonChart() {}

    /**
     * The answers as bars, the smallest at the top. A mark shows the smallest vessel that holds the water by the mass balance from the
     * same charge and cold pressure; a vessel below it is short.
     *
     * @param comparison the answers
     * @param system metric or inch-pound
     * @return the chart
     */
    public static BarChart of(MethodComparison comparison, UnitSystem system) {
        Unit<Volume> unit = system == UnitSystem.SI ? Units.LITRE : Units.US_GALLON;
        BarChartBuilder chart = BarChart.titled("Required volume by method")
                .axis("required volume", unit.symbol())
                .marks("smallest that holds the water, by the mass balance")
                .alarms("short: the relief valve would lift");
        comparison.answers().forEach(answer -> chart.bar(bar(answer, unit)));
        return chart.build();
    }

    private static Bar bar(MethodComparison.Answer answer, Unit<Volume> unit) {
        Volume required = answer.sizing().requiredVolume();
        Bar bar = Bar.of(answer.sizing().method().name(), required.in(unit));
        Volume beyond = answer.grade().beyond();
        if (beyond == null) {
            return bar;
        }
        Bar marked = bar.markedAt(required.minus(beyond).in(unit));
        return answer.grade().isShort() ? marked.noted("short").alarming() : marked;
    }
}
