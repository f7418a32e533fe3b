package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.record.ChargePoint;
import org.ullage.record.ChargeTrend;

/** Draws the charge of a vessel over the visits, corrected to one gas temperature. */
public final class ChargeTrendChart {

    private ChargeTrendChart() {}

    /**
     * The charges as found and as left.
     *
     * @param trend the trend; it must have a point
     * @param lowest lowest acceptable charge at that temperature
     * @param system metric or inch-pound
     * @return the chart
     */
    public static LineChart of(ChargeTrend trend, GaugePressure lowest, UnitSystem system) {
        Unit<Pressure> unit = system == UnitSystem.SI ? Units.BAR : Units.PSI;
        List<Point> found = new ArrayList<>();
        List<Point> left = new ArrayList<>();
        for (ChargePoint point : trend.points()) {
            double charge = point.corrected().gauge(trend.ambient()).in(unit);
            (point.asLeft() ? left : found).add(Point.on(point.date().date(), charge));
        }
        LineChartBuilder chart = LineChart.titled("Charge of " + trend.vessel() + " over the visits")
                .dates("date of the visit")
                .y("charge at 20 degC, gauge", unit.symbol());
        if (!found.isEmpty()) {
            chart.points("as found", found);
        }
        if (!left.isEmpty()) {
            chart.points("as left", left);
        }
        return chart.limit("lowest acceptable", lowest.in(unit)).build();
    }
}
