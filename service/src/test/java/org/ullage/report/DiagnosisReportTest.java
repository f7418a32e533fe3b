package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.GaugeReading;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.loop.Loop;
import org.ullage.method.TestFluid;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.OperatingTolerances;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;

class DiagnosisReportTest {

    private static final Loop LOOP =
            Loop.withContents(Volume.litres(100)).rigid().filledWith(TestFluid.WATER);

    private static final ReliefValve VALVE = ReliefValve.iso4126(GaugePressure.bar(3));

    private static GaugeReading read(double bar, double celsius) {
        return GaugeReading.of(
                GaugePressure.bar(bar),
                PressureDifference.bar(0.04),
                Temperature.celsius(celsius),
                TemperatureDifference.kelvins(1));
    }

    private static Diagnosis diagnosis(double hotBar) {
        InstalledSystem system = new InstalledSystem(
                LOOP,
                Volume.litres(3),
                Volume.litres(12),
                GaugePressure.bar(1),
                GaugePressure.bar(1.2),
                GaugePressure.bar(1.4),
                Temperature.celsius(20),
                VALVE,
                Temperature.celsius(10),
                Temperature.celsius(65),
                AbsolutePressure.STANDARD_ATMOSPHERE);
        return Diagnosis.of(system, Evidence.of(read(1.3, 20), read(hotBar, 60)));
    }

    private static OperatingChart chart() {
        OperatingCurve curve = LoopInUse.of(
                        LOOP,
                        VesselBank.of(InstalledVessel.of("V1", Volume.litres(12), GaugePressure.bar(1))),
                        new Reading(GaugePressure.bar(1.3), Temperature.celsius(20)))
                .curve();
        PressureDifference asSet = PressureDifference.bar(0.1);
        return OperatingChart.of(curve, Temperature.celsius(15), Temperature.celsius(110), UnitSystem.SI)
                .with(OperatingBand.around(curve, new OperatingTolerances(VolumeFraction.percent(5), asSet, asSet)))
                .with(VALVE);
    }

    @Test
    void saysWhatItMayBeAndHowSureThatIs() {
        Diagnosis diagnosis = diagnosis(2.713);
        Document page = DiagnosisReport.of(diagnosis, chart().build(), UnitSystem.SI);
        assertThat(page.text()).contains(diagnosis.nextStep(), "low charge", "1.3 bar +- 0.04 bar", "judgements");
        assertThat(page.html()).contains("<svg");
    }

    @Test
    void readingsThatGiveNoGasAreSaidToGiveNone() {
        assertThat(DiagnosisReport.of(diagnosis(1.2), chart().build(), UnitSystem.IP)
                        .text())
                .contains("do not give the gas that is left", "psi");
    }

    @Test
    void theChartNamesItsLevelsAndEndsAboveTheOpenValve() {
        LineChart chart = chart().with(List.of(new Reading(GaugePressure.bar(2.7), Temperature.celsius(60))))
                .build();
        assertThat(chart.svg())
                .contains("relief setting", "valve may open", "charge of V1", "fill", "readings", "normal swing");
        assertThat(chart.series())
                .allSatisfy(series -> assertThat(series.points())
                        .allSatisfy(point -> assertThat(point.high()).isLessThanOrEqualTo(3.3)));
    }
}
