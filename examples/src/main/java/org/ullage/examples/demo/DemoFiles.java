package org.ullage.examples.demo;

import java.util.List;
import org.ullage.comparison.MethodComparison;
import org.ullage.method.Sizing;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.OperatingTolerances;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.VolumeFraction;
import org.ullage.record.ChargeTrend;
import org.ullage.report.ChargeTrendChart;
import org.ullage.report.Chart;
import org.ullage.report.Document;
import org.ullage.report.Heading;
import org.ullage.report.MethodComparisonChart;
import org.ullage.report.OperatingChart;
import org.ullage.report.RecordReport;
import org.ullage.report.SizingReport;

/** The pages and charts of the invented building. */
final class DemoFiles {

    private static final PressureDifference AS_SET = PressureDifference.bar(0.1);

    private final DemoStory story;
    private final Sizing sizing;

    DemoFiles(DemoStory story) {
        this.story = story;
        this.sizing = story.sizing();
    }

    /** What every method that applies requires. */
    Chart comparison() {
        return MethodComparisonChart.of(MethodComparison.of(sizing.job()), UnitSystem.SI);
    }

    /** Pressure against temperature with the vessel that was bought, and what an invented visit read. */
    Chart curve() {
        // The gas stays as warm as the cellar.
        InstalledVessel vessel = InstalledVessel.of(
                        DemoRecord.VESSEL,
                        story.bought().chosen().nominal(),
                        story.plan().toSet().pressure())
                .withGasAt(story.plan().job().air(), story.plan().job().air());
        Reading fill =
                new Reading(story.plan().fillPressure(), story.plan().job().water());
        OperatingCurve curve = LoopInUse.of(
                        sizing.job().loop(), new VesselBank(List.of(vessel), sizing.atmosphere()), fill)
                .curve();
        OperatingTolerances tolerances = new OperatingTolerances(VolumeFraction.percent(5), AS_SET, AS_SET);
        return OperatingChart.of(curve, Temperature.celsius(10), Temperature.celsius(90), UnitSystem.SI)
                .with(OperatingBand.around(curve, tolerances))
                .with(ReliefValve.iso4126(GaugePressure.bar(3)))
                .with(List.of(
                        new Reading(GaugePressure.bar(1.2), Temperature.celsius(16)),
                        new Reading(GaugePressure.bar(2.1), Temperature.celsius(62))))
                .build();
    }

    /** The whole story on one page. */
    String page() {
        ChargeTrend trend = ChargeTrend.of(story.book(), DemoRecord.VESSEL, sizing.atmosphere());
        Document record = RecordReport.of(story.book(), sizing.atmosphere(), null, UnitSystem.SI);
        Document page = SizingReport.of(sizing, UnitSystem.SI);
        return Document.titled(DemoBuilding.NAME)
                .with(
                        Heading.section("Pressure against temperature"),
                        curve(),
                        Heading.section("The same job by other methods"),
                        comparison(),
                        Heading.section("Charge over the years"),
                        ChargeTrendChart.of(trend, GaugePressure.bar(0.9), UnitSystem.SI))
                .with(page.blocks())
                .with(record.blocks())
                .html();
    }
}
