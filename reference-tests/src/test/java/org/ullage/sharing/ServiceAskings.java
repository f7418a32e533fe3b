package org.ullage.sharing;

import java.util.List;
import org.ullage.charge.ChargeJob;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeChoice;
import org.ullage.charge.GaugeClasses;
import org.ullage.charge.GaugeConflict;
import org.ullage.charge.GaugeRangeRules;
import org.ullage.charge.GaugeRanges;
import org.ullage.condition.FluidFindings;
import org.ullage.condition.SampleQuantity;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.GaugeReading;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.diagnosis.Sign;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.record.ChargeTrend;
import org.ullage.record.FluidTrend;
import org.ullage.record.PreSeasonChecklist;
import org.ullage.record.ServiceBook;
import org.ullage.record.SizingRecord;

/** From the charge of the day to the visit ten years later. */
final class ServiceAskings {

    private static final Temperature TWENTY = Temperature.celsius(20);

    static final InstalledSystem SYSTEM = new InstalledSystem(
            QuillbrookYard.waterLoop(310),
            Volume.litres(15),
            Volume.litres(35),
            GaugePressure.bar(1.0),
            GaugePressure.bar(1.2),
            GaugePressure.bar(1.4),
            Temperature.celsius(15),
            QuillbrookYard.RELIEF,
            QuillbrookYard.COLD,
            Temperature.celsius(70),
            QuillbrookYard.AIR);

    static final Evidence EVIDENCE =
            Evidence.of(reading(1.3, 15), reading(2.8, 60)).with(Sign.RELIEF_DRIPS_HOT);

    static final ServiceBook BOOK = YardBook.kept();

    private ServiceAskings() {}

    private static GaugeReading reading(double bar, double celsius) {
        return GaugeReading.of(
                GaugePressure.bar(bar),
                PressureDifference.bar(0.04),
                Temperature.celsius(celsius),
                TemperatureDifference.kelvins(1));
    }

    static List<Asking> charge() {
        ChargeJob job = ChargeJob.of(QuillbrookYard.SIZING, Volume.litres(200), Temperature.celsius(8), TWENTY)
                .found(GaugePressure.bar(1.1), TWENTY);
        Gauge gauge = Gauge.of(GaugePressure.bar(0), GaugePressure.bar(10), GaugeClasses.ASME_B);
        return List.of(
                new Asking("charge job", () -> job),
                new Asking("charge plan", job::plan),
                new Asking("text of the plan", () -> job.plan().text(UnitSystem.SI)),
                new Asking("workings of the plan", () -> job.plan().workings()),
                new Asking("gauge", () -> gaugeChoice(gauge)),
                new Asking("text of the gauge", () -> gaugeChoice(gauge).text(UnitSystem.SI)),
                new Asking("conflict of gauges", ServiceAskings::conflict));
    }

    private static GaugeChoice gaugeChoice(Gauge gauge) {
        return GaugeChoice.of(gauge, GaugePressure.bar(1), GaugePressure.bar(3), QuillbrookYard.AIR);
    }

    private static GaugeConflict conflict() {
        return GaugeConflict.of(
                GaugeRangeRules.BOILER_MARYLAND, GaugePressure.psi(30), GaugePressure.psi(12), GaugeRanges.PSI_DIALS);
    }

    static List<Asking> diagnosis() {
        return List.of(
                new Asking("diagnosis", () -> Diagnosis.of(SYSTEM, EVIDENCE)),
                new Asking(
                        "text of the diagnosis",
                        () -> Diagnosis.of(SYSTEM, EVIDENCE).text(UnitSystem.SI)),
                new Asking("findings", () -> FluidFindings.of(YardBook.SAMPLE)),
                new Asking(
                        "text of the findings",
                        () -> FluidFindings.of(YardBook.SAMPLE).text()));
    }

    static List<Asking> record() {
        return List.of(
                new Asking("book", () -> BOOK),
                new Asking("text of the book", () -> BOOK.text(UnitSystem.SI)),
                new Asking("sizing record", () -> SizingRecord.of(QuillbrookYard.SIZING)),
                new Asking("sizing record with a place", () -> SizingRecord.of(QuillbrookYard.VALVE_ABOVE)),
                new Asking("charge trend", () -> trend()),
                new Asking("loss", () -> trend().loss()),
                new Asking("next check", () -> trend().nextCheck(GaugePressure.bar(0.7))),
                new Asking("workings of the trend", () -> trend().workings()),
                new Asking("fluid trend", () -> FluidTrend.of(BOOK, SampleQuantity.PH)),
                new Asking("checklist", () -> PreSeasonChecklist.of(BOOK, QuillbrookYard.AIR, TWENTY)));
    }

    static ChargeTrend trend() {
        return ChargeTrend.of(BOOK, "V1", QuillbrookYard.AIR);
    }
}
