package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class GaugeChoiceTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final GaugePressure TWELVE = GaugePressure.psi(12);

    private static Gauge psi(double high) {
        return Gauge.of(GaugePressure.psi(0), GaugePressure.psi(high), GaugeClasses.ASME_B);
    }

    private static GaugeChoice choice(double high) {
        return GaugeChoice.of(psi(high), TWELVE, GaugePressure.psi(30), AIR);
    }

    /** At 12 psi a 0 to 100 psi grade B gauge may be off by 3 psi, 11 % of the absolute pressure (3 of 26.7 psi). */
    @Test
    void aTyreGaugeCannotDecideAtTwelvePsi() {
        GaugeChoice tyre = choice(100);
        assertThat(tyre.error().in(Units.PSI)).isCloseTo(3, within(1e-9));
        assertThat(tyre.errorOfAbsolute()).isCloseTo(3 / 26.6959, within(1e-6));
        assertThat(tyre.decides()).isFalse();
        assertThat(tyre.better()).contains(new Gauge(GaugeRanges.PSI_DIALS.get(1), GaugeClasses.ASME_B));
        assertThat(tyre.warnings())
                .anyMatch(caution -> caution.text().contains("cannot decide")
                        && caution.text().contains("A finer range will do."));
        assertThat(tyre.warnings()).anyMatch(caution -> caution.text().contains("lowest quarter"));
        assertThat(tyre.text(UnitSystem.IP))
                .startsWith("gauge: 0 psi to 100 psi")
                .contains("! The gauge cannot decide")
                .contains(
                        "at 12 psi it may be off by 3 psi either way: 25 % of the reading, 11.2 % of the absolute pressure")
                .contains("it cannot decide to within 1.45 psi [COMMON_PRACTICE]")
                .contains("better: 0 psi to 30 psi (0 bar to 2.068 bar), ASME B40.100 grade B, off by 0.6 psi");
    }

    @Test
    void aLowRangeGaugeDecidesAndNothingIsBetter() {
        GaugeChoice low = choice(30);
        assertThat(low.error().in(Units.PSI)).isCloseTo(0.6, within(1e-9));
        assertThat(low.decides()).isTrue();
        assertThat(low.better()).isEmpty();
        assertThat(low.warnings()).isEmpty();
        assertThat(low.text(UnitSystem.SI)).contains("it can decide").doesNotContain("!");
    }

    @Test
    void theToleranceMayBeTheCallers() {
        assertThat(choice(60).decides()).isFalse();
        assertThat(choice(60).within(PressureDifference.psi(2)).decides()).isTrue();
        assertThat(choice(60).within(PressureDifference.psi(1.8)).decides()).isTrue();
        assertThat(choice(30).within(PressureDifference.psi(0.5)).warnings())
                .anyMatch(caution -> caution.text().contains("take a finer class"));
        // 0 to 30 psi is finer than 0 to 100 psi and still off by 0.6 psi
        assertThat(choice(100).within(PressureDifference.psi(0.5)).warnings())
                .anyMatch(caution -> caution.text().contains("take a finer class"));
        assertThatThrownBy(() -> choice(60).within(PressureDifference.psi(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("tolerance of the charge");
    }

    @Test
    void aDialThatEndsTooLowIsReplacedThoughItIsFiner() {
        GaugeChoice small = GaugeChoice.of(psi(15), GaugePressure.psi(10), GaugePressure.psi(30), AIR);
        assertThat(small.warnings()).anyMatch(caution -> caution.text().contains("it will be damaged"));
        assertThat(small.better().orElseThrow().range().high()).isEqualTo(GaugePressure.psi(30));
        GaugeChoice beyond = small.among(List.of(GaugeRanges.PSI_DIALS.get(0)));
        assertThat(beyond.better()).isEmpty();
    }

    @Test
    void rangesInBarServeEuropeanClasses() {
        Gauge gauge = Gauge.of(GaugePressure.bar(0), GaugePressure.bar(10), GaugeClasses.EN_2_5);
        GaugeChoice choice = GaugeChoice.of(gauge, GaugePressure.bar(1.5), GaugePressure.bar(3), AIR);
        assertThat(choice.better().orElseThrow().range().high()).isEqualTo(GaugePressure.bar(4));
        // 2.5 % of 4 bar is just the usual 0.1 bar
        assertThat(GaugeChoice.of(choice.better().orElseThrow(), choice.reading(), choice.highest(), AIR)
                        .decides())
                .isTrue();
        assertThat(GaugeRanges.usualFor(GaugeClass.uniform("certificate", "own", 1, GaugeClasses.EN_1.source())))
                .hasSize(14);
    }

    @Test
    void theMiddleHalfComesBeforeTheLeastError() {
        // 3 psi stands at 15 % of 0 to 20 psi, off by 0.6; and at 55 % of -30 to 30 psi, off by 1.2
        List<GaugeRange> ranges = List.of(
                GaugeRange.given(GaugePressure.psi(0), GaugePressure.psi(20)),
                GaugeRange.given(GaugePressure.psi(-30), GaugePressure.psi(30)));
        Gauge best = GaugeRanges.best(ranges, GaugeClasses.ASME_B, GaugePressure.psi(3), GaugePressure.psi(10))
                .orElseThrow();
        assertThat(best.range()).isEqualTo(ranges.get(1));
        assertThat(best.errorAt(GaugePressure.psi(3)))
                .isGreaterThan(new Gauge(ranges.get(0), GaugeClasses.ASME_B).errorAt(GaugePressure.psi(3)));
    }

    /** 100 L between 2 and 3.2 bar abs; a charge of 2 bar abs read to 0.1 bar: 1.9 gives 190 (1/2 - 1/3.2), 2.1 gives 100 (1 - 2.1/3.2). */
    @Test
    void theErrorIsWorthLitresOfTheVessel() {
        AbsolutePressure oneBar = AbsolutePressure.bar(1);
        VesselAcceptance vessel =
                VesselAcceptance.of(Volume.litres(100), AbsolutePressure.bar(2), AbsolutePressure.bar(3.2));
        Gauge gauge = Gauge.of(GaugePressure.bar(0), GaugePressure.bar(4), GaugeClasses.EN_2_5);
        GaugeChoice choice = GaugeChoice.of(gauge, GaugePressure.bar(1), GaugePressure.bar(2.2), oneBar)
                .forVessel(vessel);
        assertThat(choice.acceptanceIfLow().orElseThrow().in(Units.LITRE)).isCloseTo(35.625 - 37.5, within(1e-9));
        assertThat(choice.acceptanceIfHigh().orElseThrow().in(Units.LITRE)).isCloseTo(34.375 - 37.5, within(1e-9));
        assertThat(choice.text(UnitSystem.SI))
                .contains("if the true charge is lower by that, the vessel takes in 1.88 L less")
                .contains("if the true charge is higher by that, the vessel takes in 3.13 L less");
        assertThat(choice.workings().text(UnitSystem.SI))
                .contains("V_n * max(0, min(1, max(0, 1 - p_0 / p_f)) - min(1, max(0, 1 - p_0 / p_i)))")
                .contains("c / 100 * (p_high - p_low)");
        assertThat(GaugeChoice.of(gauge, GaugePressure.bar(1), GaugePressure.bar(2.2), oneBar)
                        .acceptanceIfLow())
                .isEmpty();
    }

    @Test
    void theHighestPressureCannotBeBelowTheReading() {
        assertThat(GaugeChoice.of(psi(30), TWELVE, TWELVE, AIR).decides()).isTrue();
        assertThatThrownBy(() -> GaugeChoice.of(psi(30), TWELVE, GaugePressure.psi(10), AIR))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("highest pressure the gauge will see");
    }
}
