package org.ullage.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.OperatingPoint;
import org.ullage.operation.Reading;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/** Draws the pressure of a loop against its temperature, with the band a sound vessel may be in and what was read. */
public final class OperatingChart {

    private static final int STEPS = 60;

    private final OperatingCurve curve;
    private final UnitSystem system;
    private final Temperature from;
    private final Temperature to;
    private final @Nullable OperatingBand band;
    private final @Nullable ReliefValve valve;
    private final List<Reading> readings;

    private OperatingChart(
            OperatingCurve curve,
            UnitSystem system,
            Temperature from,
            Temperature to,
            @Nullable OperatingBand band,
            @Nullable ReliefValve valve,
            List<Reading> readings) {
        this.curve = curve;
        this.system = system;
        this.from = from;
        this.to = to;
        this.band = band;
        this.valve = valve;
        this.readings = List.copyOf(readings);
    }

    /**
     * Begins a chart.
     *
     * @param curve the loop in use
     * @param from lowest temperature shown
     * @param to highest temperature shown
     * @param system metric or inch-pound
     * @return a chart of the curve, the charge and the fill
     */
    public static OperatingChart of(OperatingCurve curve, Temperature from, Temperature to, UnitSystem system) {
        return new OperatingChart(curve, system, from, to, null, null, List.of());
    }

    /**
     * Adds the band of a sound vessel.
     *
     * @param normal the band
     * @return the chart with it
     */
    public OperatingChart with(OperatingBand normal) {
        return new OperatingChart(curve, system, from, to, normal, valve, readings);
    }

    /**
     * Adds the relief valve, corrected to the level of the reference point.
     *
     * @param relief the valve
     * @return the chart with its setting and where it may open
     */
    public OperatingChart with(ReliefValve relief) {
        return new OperatingChart(curve, system, from, to, band, relief, readings);
    }

    /**
     * Adds readings.
     *
     * @param read what was read
     * @return the chart with them
     */
    public OperatingChart with(List<Reading> read) {
        return new OperatingChart(curve, system, from, to, band, valve, read);
    }

    /**
     * Draws it.
     *
     * @return the chart
     */
    public LineChart build() {
        LineChartBuilder chart = LineChart.titled("Pressure against temperature")
                .x("temperature of the loop", temperature().symbol())
                .y("gauge pressure at the vessel", pressure().symbol())
                .fromZero();
        if (band != null) {
            chart.band("normal swing", bandPoints(band));
        }
        chart.line("as filled and charged", linePoints());
        if (!readings.isEmpty()) {
            chart.points("readings", readings.stream().map(this::point).toList());
        }
        for (InstalledVessel vessel : curve.inUse().bank().vessels()) {
            chart.level("charge of " + vessel.name(), number(vessel.charge()));
        }
        chart.level("fill", number(curve.inUse().known().pressure()));
        if (valve != null) {
            chart.level("valve may open", number(valve.mayOpenFrom()));
            chart.limit("relief setting", number(valve.setting()));
        }
        return chart.build();
    }

    private List<Point> linePoints() {
        List<Point> points = new ArrayList<>();
        for (OperatingPoint point : curve.sample(from, to, STEPS)) {
            GaugePressure known = point.pressure();
            if (known != null && isShown(known)) {
                points.add(Point.at(point.temperature().in(temperature()), number(known)));
            }
        }
        return points;
    }

    /** Beyond the fully open valve a curve would be a fiction. */
    private boolean isShown(GaugePressure gauge) {
        return valve == null || gauge.compareTo(valve.fullyOpenAt()) <= 0;
    }

    private List<Point> bandPoints(OperatingBand normal) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            Temperature here = Temperature.ofSi(from.si() + (to.si() - from.si()) * i / STEPS);
            GaugePressure low = normal.lowest(here).pressure();
            GaugePressure high = normal.highest(here).pressure();
            if (low != null && high != null && isShown(high)) {
                points.add(Point.between(here.in(temperature()), number(low), number(high)));
            }
        }
        return points;
    }

    private Point point(Reading reading) {
        return Point.at(reading.temperature().in(temperature()), number(reading.pressure()));
    }

    private double number(GaugePressure gauge) {
        return gauge.in(pressure());
    }

    private Unit<Pressure> pressure() {
        return system == UnitSystem.SI ? Units.BAR : Units.PSI;
    }

    private Unit<Temperature> temperature() {
        return system == UnitSystem.SI ? Units.CELSIUS : Units.FAHRENHEIT;
    }
}
