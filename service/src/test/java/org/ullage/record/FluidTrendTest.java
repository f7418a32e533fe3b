package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.ullage.condition.SampleQuantity;
import org.ullage.condition.SampleValue;

class FluidTrendTest {

    private static VisitRecord visit(LocalDate date, double ph, String treatment) {
        return VisitRecord.of(date, "C")
                .sample(new SampleNote(
                        List.of(), List.of(SampleReading.of(SampleValue.ph(ph))), null, null, null, null, null))
                .fluidTreatment(treatment)
                .build();
    }

    private static ServiceBook book(double... ph) {
        ServiceBook book = Books.leastBook();
        for (int i = 0; i < ph.length; i++) {
            book = book.withVisit(visit(Books.START.plusDays(1461L * i), ph[i], null));
        }
        return book;
    }

    /** Four Julian years apart: 8.4, 8.2, 8.0 falls by 0.05 a year. */
    @Test
    void aFallingPh() {
        FluidChange.Estimated change = (FluidChange.Estimated)
                FluidTrend.of(book(8.4, 8.2, 8.0), SampleQuantity.PH).change();
        assertThat(change.perYear()).isCloseTo(-0.05, within(1e-12));
        assertThat(change.least()).isLessThanOrEqualTo(change.perYear());
        assertThat(change.greatest()).isLessThan(0);
        assertThat(FluidTrend.of(book(8.4, 8.2, 8.0), SampleQuantity.PH).text())
                .contains("2020-10-01: pH 8.4")
                .contains("pH changes by -0.05 a year")
                .doesNotContain("within the scatter");
        assertThat(FluidTrend.of(book(8.0, 8.2, 8.4), SampleQuantity.PH).text())
                .contains("pH changes by +0.05 a year")
                .doesNotContain("within the scatter");
    }

    @Test
    void itsIntervalIsThatOfTheUsualLine() {
        SimpleRegression usual = new SimpleRegression();
        usual.addData(new double[][] {{0, 8.4}, {4, 8.2}, {8, 8.1}});
        double half = usual.getSlopeConfidenceInterval();
        FluidTrend trend = FluidTrend.of(book(8.4, 8.2, 8.1), SampleQuantity.PH);
        FluidChange.Estimated change = (FluidChange.Estimated) trend.change();
        assertThat(change.least()).isCloseTo(usual.getSlope() - half, within(1e-9));
        assertThat(change.greatest()).isCloseTo(usual.getSlope() + half, within(1e-9));
        assertThat(trend.text()).contains("no change is within the scatter");
    }

    @Test
    void aSteadyPhMayBeUnchanged() {
        assertThat(FluidTrend.of(book(8, 8, 8), SampleQuantity.PH).text())
                .contains("pH changes by +0 a year")
                .contains("no change is within the scatter");
    }

    @Test
    void aSampleFarFromTheLineIsNamed() {
        assertThat(FluidTrend.of(book(8.4, 8.31, 8.2, 8.1, 6.5, 7.9, 7.81, 7.7), SampleQuantity.PH)
                        .text())
                .contains("far from the line, look for the cause: 2036-10-01: pH 6.5");
    }

    @Test
    void tooFewGiveNoNumber() {
        assertThat(FluidTrend.of(book(8.4, 8.2), SampleQuantity.PH).text())
                .contains("too few samples for a rate of pH: 1");
        assertThat(FluidTrend.of(book(8.4, 8.2), SampleQuantity.PH).change())
                .isEqualTo(new FluidChange.TooFew(SampleQuantity.PH, 1));
        assertThat(FluidTrend.of(book(8.4, 8.2, 8.0), SampleQuantity.OXYGEN).change())
                .isEqualTo(new FluidChange.TooFew(SampleQuantity.OXYGEN, 0));
    }

    @Test
    void aTreatmentIsNotTakenForARise() {
        ServiceBook book = Books.leastBook()
                .withVisit(visit(Books.START, 8.4, null))
                .withVisit(visit(Books.START.plusDays(1461), 8.2, "inhibitor"))
                .withVisit(visit(Books.START.plusDays(2922), 8.6, null))
                .withVisit(visit(Books.START.plusDays(4383), 8.4, null));
        FluidTrend trend = FluidTrend.of(book, SampleQuantity.PH);
        assertThat(trend.points()).extracting(SamplePoint::stretch).containsExactly(0, 0, 1, 1);
        assertThat(((FluidChange.Estimated) trend.change()).perYear()).isCloseTo(-0.05, within(1e-12));
        assertThat(Books.serialised(trend)).isEqualTo(trend);
    }
}
