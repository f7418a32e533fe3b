package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class ChargeTrendTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final LocalDate START = Books.START;

    private static ServiceBook begun(double bar, double celsius) {
        return ServiceBook.of(CommissioningNote.of("Shed", START, "A", Books.vessel("V1", bar, celsius))
                .build());
    }

    /** What a gauge shows of a charge that is so much at 20 degC. */
    private static double shown(double barAt20, double celsius) {
        return ChargeCorrection.at(
                        GaugePressure.bar(barAt20), Temperature.celsius(20), Temperature.celsius(celsius), AIR)
                .in(Units.BAR);
    }

    private static ChargeLoss.Estimated estimated(ServiceBook book) {
        return (ChargeLoss.Estimated) ChargeTrend.of(book, "V1", AIR).loss();
    }

    /** 0.1 bar in each 365.25 days, read at four shell temperatures: the temperature must not show. */
    @Test
    void aSteadyLossComesBackWhateverTheTemperature() {
        ServiceBook book = begun(shown(1.5, 5), 5);
        double[] celsius = {30, 12, 25};
        for (int i = 1; i <= 3; i++) {
            LocalDate day = START.plusDays(400L * i);
            double bar = 1.5 - 0.1 * 400 * i / 365.25;
            book = book.withVisit(Books.visit(day, Books.found("V1", shown(bar, celsius[i - 1]), celsius[i - 1])));
        }
        ChargeLoss.Estimated loss = estimated(book);
        assertThat(loss.perYear().in(Units.BAR)).isCloseTo(0.1, within(1e-9));
        assertThat(loss.least().in(Units.BAR)).isCloseTo(0.1, within(1e-6));
        assertThat(loss.degreesOfFreedom()).isEqualTo(2);
        assertThat(loss.outliers()).isEmpty();
        assertThat(loss.text(UnitSystem.SI)).startsWith("loss a year 0.1 bar").doesNotContain("within the scatter");
    }

    /** Recharged each time: the losses between are 0.10, 0.14 and 0.12 bar in equal years, so the mean and its t interval. */
    @Test
    void aRechargeBeginsANewStretch() {
        ServiceBook book = begun(1.5, 20);
        double[] losses = {0.10, 0.14, 0.12};
        LocalDate day = START;
        for (double loss : losses) {
            day = day.plusDays(1461);
            ChargeCheck check = Books.found("V1", 1.5 - loss, 20).toBuilder()
                    .left(GaugePressure.bar(1.5))
                    .build();
            book = book.withVisit(Books.visit(day, check));
        }
        ChargeLoss.Estimated loss = estimated(book);
        // 1461 days are four Julian years; each stretch of two points has S_xx = 8, S_xy = -2 x loss, residual sum
        // (loss - mean)^2 / 2
        assertThat(loss.perYear().in(Units.BAR)).isCloseTo(0.12 / 4, within(1e-12));
        assertThat(loss.degreesOfFreedom()).isEqualTo(2);
        double scatter = Math.sqrt((0.0004 + 0.0004) / 2 / 2);
        // t(0.975; 2) = 4.302653, NIST/SEMATECH e-Handbook, table 1.3.6.7.2 (4.303)
        double half = 4.302653 * scatter / Math.sqrt(24);
        assertThat(loss.greatest().in(Units.BAR)).isCloseTo(0.03 + half, within(1e-7));
        assertThat(loss.least().in(Units.BAR)).isCloseTo(0.03 - half, within(1e-7));
    }

    @Test
    void tooFewReadingsGiveNoNumber() {
        ServiceBook one = begun(1.5, 20);
        assertThat(ChargeTrend.of(one, "V1", AIR).loss()).isEqualTo(new ChargeLoss.TooFew(0));
        ServiceBook two = one.withVisit(Books.visit(START.plusYears(1), Books.found("V1", 1.4, 20)));
        ChargeTrend trend = ChargeTrend.of(two, "V1", AIR);
        assertThat(trend.loss()).isEqualTo(new ChargeLoss.TooFew(1));
        assertThat(trend.text(UnitSystem.SI)).contains("too few readings for a rate: 1 interval(s)");
        assertThat(trend.workings().steps()).hasSize(2);
        ServiceBook three = two.withVisit(Books.visit(START.plusYears(2), Books.found("V1", 1.35, 20)));
        assertThat(ChargeTrend.of(three, "V1", AIR).loss()).isInstanceOf(ChargeLoss.Estimated.class);
        ServiceBook sameDay = one.withVisit(Books.visit(START, Books.found("V1", 1.4, 20)))
                .withVisit(Books.visit(START, Books.found("V1", 1.41, 20)));
        assertThat(ChargeTrend.of(sameDay, "V1", AIR).loss()).isInstanceOf(ChargeLoss.TooFew.class);
    }

    @Test
    void leavesOutWhatIsNoCharge() {
        ChargeCheck underPressure = ChargeCheck.of("V1")
                .waterSideAtZero(false)
                .found(GaugePressure.bar(1.8))
                .gasTemperature(Temperature.celsius(20))
                .build();
        ChargeCheck noTemperature = ChargeCheck.of("V1")
                .waterSideAtZero(true)
                .found(GaugePressure.bar(1.4))
                .build();
        ServiceBook book = begun(1.5, 20)
                .withVisit(Books.visit(START.plusYears(1), underPressure))
                .withVisit(Books.visit(START.plusYears(2), noTemperature));
        ChargeTrend trend = ChargeTrend.of(book, "V1", AIR);
        assertThat(trend.points()).hasSize(1);
        assertThat(trend.leftOut())
                .extracting(LeftOut::toString)
                .allSatisfy(line -> assertThat(trend.text(UnitSystem.SI)).contains(line))
                .containsExactly(
                        "2021-10-01 left out: read under water pressure, which is not the charge",
                        "2022-10-01 left out: the temperature of the gas is not recorded");
    }

    @Test
    void aChargeLeftUnderPressureStillEndsTheStretch() {
        ChargeCheck unclear = ChargeCheck.of("V1").left(GaugePressure.bar(1.5)).build();
        ServiceBook book = begun(1.5, 20)
                .withVisit(Books.visit(START.plusYears(1), unclear))
                .withVisit(Books.visit(START.plusYears(2), Books.found("V1", 1.4, 20)));
        assertThat(ChargeTrend.of(book, "V1", AIR).points())
                .extracting(ChargePoint::stretch)
                .containsExactly(0, 1);
    }

    @Test
    void aNewVesselBeginsAnew() {
        VesselNote fitted = Books.vessel("V1", 1.3, 20).toBuilder()
                .nominal(Volume.litres(80))
                .build();
        VisitRecord replaced = VisitRecord.of(START.plusYears(1), "C")
                .charge(Books.found("V1", 0.2, 20))
                .replacement(new Replacement("V1", fitted, "membrane torn", null, null))
                .build();
        VisitRecord unclear = Books.visit(
                START, ChargeCheck.of("V1").left(GaugePressure.bar(1.8)).build());
        ServiceBook book = begun(1.5, 20)
                .withVisit(unclear)
                .withVisit(replaced)
                .withVisit(Books.visit(START.plusYears(2), Books.found("V1", 1.25, 20)));
        ChargeTrend trend = ChargeTrend.of(book, "V1", AIR);
        assertThat(trend.points())
                .extracting(point -> point.read().in(Units.BAR))
                .containsExactly(1.3, 1.25);
        assertThat(trend.leftOut()).isEmpty();
        assertThat(TagNote.of(book, "V1").text(UnitSystem.SI)).contains("80 L").contains("gas charge: 1.3 bar");
    }

    @Test
    void namesAnOutlierWithItsRule() {
        ServiceBook book = begun(1.5, 20);
        double[] noise = {0.002, -0.002, 0.001, -0.4, -0.001, 0.002, -0.002};
        for (int i = 1; i <= noise.length; i++) {
            book = book.withVisit(
                    Books.visit(START.plusYears(i), Books.found("V1", 1.5 - 0.02 * i + noise[i - 1], 20)));
        }
        ChargeTrend trend = ChargeTrend.of(book, "V1", AIR);
        assertThat(((ChargeLoss.Estimated) trend.loss()).outliers())
                .singleElement()
                .satisfies(point -> assertThat(point.date()).hasToString("2024-10-01"));
        assertThat(trend.text(UnitSystem.IP)).contains("far from the line").contains("Grubbs' test");
    }

    @Test
    void theNextCheckIsNeverLaterThanAYear() {
        ServiceBook book = begun(1.5, 20)
                .withVisit(Books.visit(START.plusYears(1), Books.found("V1", 1.5, 20)))
                .withVisit(Books.visit(START.plusYears(2), Books.found("V1", 1.5, 20)));
        NextCheck next = ChargeTrend.of(book, "V1", AIR).nextCheck(GaugePressure.bar(0.5));
        assertThat(next.date()).isEqualTo(START.plusYears(3));
        assertThat(estimated(book).text(UnitSystem.SI)).contains("no loss is within the scatter");
        assertThat(next.source().provenance()).isEqualTo(Provenance.PUBLISHED);
        NextCheck tooFew = ChargeTrend.of(begun(1.5, 20), "V1", AIR).nextCheck(GaugePressure.bar(0.5));
        assertThat(tooFew.date()).isEqualTo(START.plusYears(1));
    }

    /** A steady 0.1 bar in 365.25 days from 1.3 bar comes to 1.25 bar after 182.6 days. */
    @Test
    void aLossBringsTheNextCheckForward() {
        ServiceBook book = begun(1.5, 20);
        for (int i = 1; i <= 2; i++) {
            book = book.withVisit(
                    Books.visit(START.plusDays(365L * i), Books.found("V1", 1.5 - 0.1 * 365 * i / 365.25, 20)));
        }
        LocalDate last = START.plusDays(730);
        ChargeTrend trend = ChargeTrend.of(book, "V1", AIR);
        GaugePressure lowest = GaugePressure.bar(1.5 - 0.1 * (730 + 182.6) / 365.25);
        assertThat(trend.nextCheck(lowest).date()).isEqualTo(last.plusDays(183));
        assertThat(trend.nextCheck(GaugePressure.bar(1.4)).date()).isEqualTo(last);
        assertThat(trend.nextCheck(GaugePressure.bar(1.4)).reason()).contains("recharge");
    }

    @Test
    void eachReadingSaysWhoseChargeItWas() {
        ServiceBook book = begun(1.5, 20).withVisit(Books.visit(START.plusYears(1), Books.found("V1", 1.4, 18)));
        assertThat(ChargeTrend.of(book, "V1", AIR).text(UnitSystem.SI))
                .contains("2020-10-01: 1.5 bar at 20 degC")
                .containsPattern("2020-10-01: .* as left")
                .containsPattern("2021-10-01: 1.4 bar at 18 degC.* as found");
    }

    @Test
    void aChargeRightAtTheLowestIsRecharged() {
        ChargeTrend trend = ChargeTrend.of(begun(1.5, 20), "V1", AIR);
        GaugePressure there = trend.points().get(0).corrected().gauge(AIR);
        assertThat(trend.nextCheck(there).reason()).contains("recharge");
    }

    @Test
    void scatterBringsItForwardToo() {
        ServiceBook calm = begun(1.5, 20);
        ServiceBook rough = calm;
        for (int i = 1; i <= 6; i++) {
            double bar = 1.5 - 0.03 * i;
            double noise = i % 2 == 0 ? 0.04 : -0.04;
            calm = calm.withVisit(Books.visit(START.plusYears(i), Books.found("V1", bar, 20)));
            rough = rough.withVisit(Books.visit(START.plusYears(i), Books.found("V1", bar + noise, 20)));
        }
        GaugePressure lowest = GaugePressure.bar(1.26);
        assertThat(ChargeTrend.of(rough, "V1", AIR).nextCheck(lowest).date())
                .isBefore(ChargeTrend.of(calm, "V1", AIR).nextCheck(lowest).date());
    }

    @Test
    void nothingRecordedMeansCheckNow() {
        ChargeTrend empty = ChargeTrend.of(Books.leastBook(), "V1", AIR);
        assertThat(empty.leftOut())
                .singleElement()
                .extracting(LeftOut::reason)
                .isEqualTo("the charge as set is not recorded");
        assertThat(empty.loss()).isEqualTo(new ChargeLoss.TooFew(0));
        assertThatExceptionOfType(MissingInputException.class)
                .isThrownBy(() -> empty.nextCheck(GaugePressure.bar(1)))
                .withMessageContaining("check the charge now");
        assertThatExceptionOfType(OutOfRangeException.class)
                .isThrownBy(() -> ChargeTrend.of(Books.leastBook(), "V9", AIR))
                .withMessageContaining("one of V1");
    }

    @Test
    void showsItsSteps() {
        ServiceBook book = begun(1.5, 20);
        for (int i = 1; i <= 3; i++) {
            book = book.withVisit(
                    Books.visit(START.plusYears(i), Books.found("V1", 1.5 - 0.1 * i + 0.01 * (i % 2), 20)));
        }
        ChargeTrend trend = ChargeTrend.of(book, "V1", AIR);
        String workings = trend.workings().text(UnitSystem.SI);
        assertThat(workings)
                .contains("(p + p_a) * T_20 / T")
                .contains("charge of 2020-10-01 as left, stretch 1, at 20 degC")
                .contains("charge of 2021-10-01 as found, stretch 1, at 20 degC")
                .contains("-S_xy / S_xx")
                .contains("t * s / S_xx^0.5");
        double loss = trend.workings().steps().get(4).result().number();
        assertThat(loss).isEqualTo(estimated(book).perYear().in(Units.BAR));
        assertThat(Books.serialised(trend)).isEqualTo(trend);
        assertThat(Books.serialised(trend.loss())).isEqualTo(trend.loss());
    }
}
