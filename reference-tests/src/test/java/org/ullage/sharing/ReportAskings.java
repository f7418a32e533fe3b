package org.ullage.sharing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.ullage.comparison.MethodComparison;
import org.ullage.condition.FluidFindings;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.report.ChargeTrendChart;
import org.ullage.report.Chart;
import org.ullage.report.ComparisonReport;
import org.ullage.report.DiagnosisReport;
import org.ullage.report.Document;
import org.ullage.report.FluidReport;
import org.ullage.report.LineChart;
import org.ullage.report.MethodComparisonChart;
import org.ullage.report.OperatingChart;
import org.ullage.report.RecordReport;
import org.ullage.report.SizingReport;
import org.ullage.report.SweepChart;

/** Pages and charts, whole and as text. */
final class ReportAskings {

    private static final UnitSystem SI = UnitSystem.SI;

    private ReportAskings() {}

    static List<Asking> all() {
        List<Asking> askings = new ArrayList<>();
        page("sizing", () -> SizingReport.of(QuillbrookYard.SIZING, SI), askings);
        page("comparison", () -> ComparisonReport.of(MethodComparison.of(QuillbrookYard.RADIATORS), SI), askings);
        page("fluid", () -> FluidReport.of(FluidFindings.of(YardBook.SAMPLE)), askings);
        page("diagnosis", ReportAskings::diagnosis, askings);
        page(
                "record",
                () -> RecordReport.of(ServiceAskings.BOOK, QuillbrookYard.AIR, Temperature.celsius(20), SI),
                askings);
        chart("operating", ReportAskings::operatingChart, askings);
        chart("methods", () -> MethodComparisonChart.of(MethodComparison.of(QuillbrookYard.RADIATORS), SI), askings);
        chart("sweep", () -> SweepChart.of(SizingAskings.sweep(), SI), askings);
        chart("charge trend", () -> ChargeTrendChart.of(ServiceAskings.trend(), GaugePressure.bar(0.7), SI), askings);
        return askings;
    }

    private static LineChart operatingChart() {
        return OperatingChart.of(QuillbrookYard.CURVE, QuillbrookYard.COLD, QuillbrookYard.HOT, SI)
                .with(QuillbrookYard.RELIEF)
                .build();
    }

    private static Document diagnosis() {
        return DiagnosisReport.of(Diagnosis.of(ServiceAskings.SYSTEM, ServiceAskings.EVIDENCE), operatingChart(), SI);
    }

    private static void page(String name, Supplier<Document> page, List<Asking> askings) {
        askings.add(new Asking(name + " page", page::get));
        askings.add(new Asking(name + " page as text", () -> page.get().text()));
        askings.add(new Asking(name + " page as HTML", () -> page.get().html()));
        askings.add(new Asking(name + " page as Markdown", () -> page.get().markdown()));
    }

    private static void chart(String name, Supplier<? extends Chart> chart, List<Asking> askings) {
        askings.add(new Asking(name + " chart", chart::get));
        askings.add(new Asking(name + " chart drawn", () -> chart.get().svg()));
    }
}
