package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Month;
import org.junit.jupiter.api.Test;
import org.ullage.condition.FluidSample;
import org.ullage.condition.LoopTrait;
import org.ullage.condition.SampleValue;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.record.ChargeCheck;
import org.ullage.record.ChargeNote;
import org.ullage.record.ChargeTrend;
import org.ullage.record.CommissioningNote;
import org.ullage.record.Gas;
import org.ullage.record.SampleNote;
import org.ullage.record.ServiceBook;
import org.ullage.record.VesselNote;
import org.ullage.record.VisitRecord;

class RecordReportTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;

    private static ServiceBook book() {
        VesselNote vessel = VesselNote.of("V1")
                .charge(new ChargeNote(null, GaugePressure.bar(1.2), Temperature.celsius(20), Gas.NITROGEN, null))
                .build();
        return ServiceBook.of(CommissioningNote.of("Mill <b>", LocalDate.of(2020, Month.MAY, 4), "N. N.", vessel)
                        .build())
                .withVisit(visit(2021, 1.15, 8.1))
                .withVisit(visit(2022, 1.11, 6.7));
    }

    private static VisitRecord visit(int year, double bar, double ph) {
        return VisitRecord.of(LocalDate.of(year, Month.MAY, 4), "N. N.")
                .charge(ChargeCheck.of("V1")
                        .waterSideAtZero(true)
                        .found(GaugePressure.bar(bar))
                        .gasTemperature(Temperature.celsius(20))
                        .build())
                .sample(SampleNote.of(FluidSample.of(LoopTrait.GLYCOL).with(SampleValue.ph(ph))))
                .build();
    }

    @Test
    void holdsRecordTrendLastSampleAndCheckList() {
        Document page = RecordReport.of(book(), AIR, Temperature.celsius(5), UnitSystem.SI);
        assertThat(page.text())
                .contains("Charge of V1", "loss a year", "Before the season")
                .contains("Fluid, sample of 2022-05-04", "pH 6.7")
                .doesNotContain("pH 8.1 ->");
        assertThat(page.html()).contains("Record of Mill &lt;b&gt;").doesNotContain("Mill <b>");
    }

    @Test
    void drawsTheChargeAsFoundAndAsLeft() {
        LineChart chart = ChargeTrendChart.of(ChargeTrend.of(book(), "V1", AIR), GaugePressure.bar(0.9), UnitSystem.IP);
        assertThat(chart.svg()).contains("as found", "as left", "lowest acceptable", "psi", "2021");
        assertThat(chart.svg()).isEqualTo(chart.svg());
    }
}
