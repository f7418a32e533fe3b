package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;

/**
 * Fill window 1.2 to 1.4 bar, valve of 3 bar fully open at 3.3 bar: below the window 1.4 bar (down to 0.2 bar under the air), above it
 * 1.9 bar, 3.5 bar in all.
 */
class ColdPressureLikelihoodTest {

    private static ColdPressureLikelihood read(InstalledSystem system, double bar, double errorBar) {
        GaugeReading cold = GaugeReading.of(
                GaugePressure.bar(bar),
                PressureDifference.bar(errorBar),
                Temperature.celsius(20),
                TemperatureDifference.kelvins(1));
        return new ColdPressureLikelihood(system, Evidence.of(cold, SomeSystem.reading(2, 60)));
    }

    /** A density for each bar, read with a fine gauge so that the edges are sharp. */
    @ParameterizedTest
    @CsvSource({
        "1.3, HEALTHY, 5",
        "1.3, OVER_FILLED, 0",
        "1.3, FEED_PASSING, 1",
        "1.3, SHORT_OF_WATER, 0",
        "1.3, AIR_IN_LOOP, 2.5",
        "1.3, LOW_CHARGE, 2.642857",
        "2.0, HEALTHY, 0",
        "2.0, OVER_FILLED, 0.526316",
        "2.0, FEED_PASSING, 0.421053",
        "2.0, AIR_IN_LOOP, 0",
        "2.0, WATERLOGGED, 0.142857",
        "0.5, HEALTHY, 0",
        "0.5, SHORT_OF_WATER, 0.714286",
        "0.5, OVER_CHARGED, 0.357143",
        "0.5, LOW_CHARGE, 0.142857",
        "-0.1, SHORT_OF_WATER, 0.714286",
        "3.4, OVER_FILLED, 0",
    })
    void eachFaultHasItsPressures(double bar, Hypothesis hypothesis, double eachBar) {
        assertThat(1e5 * read(SomeSystem.SMALL, bar, 0.001).of(hypothesis)).isCloseTo(eachBar, within(1e-5));
    }

    /** Read to 0.04 bar, a standard deviation of 0.023 bar. */
    @ParameterizedTest
    @CsvSource({
        "1.1, below the fill window",
        "1.17, below the fill window",
        "1.18, in the fill window",
        "1.3, in the fill window",
        "1.42, in the fill window",
        "1.43, above the fill window",
        "2, above the fill window",
    })
    void theWordsAllowForTheGauge(double bar, String words) {
        assertThat(read(SomeSystem.SMALL, bar, 0.04).words()).isEqualTo(words);
    }

    /** One fill pressure of 1.3 bar counts as 1.2 to 1.4 bar. */
    @Test
    void nobodyFillsToAPoint() {
        InstalledSystem point = filled(SomeSystem.SMALL, pressure -> GaugePressure.bar(1.3));
        assertThat(1e5 * read(point, 1.39, 0.001).of(Hypothesis.HEALTHY)).isCloseTo(5, within(1e-5));
        assertThat(1e5 * read(point, 1.21, 0.001).of(Hypothesis.HEALTHY)).isCloseTo(5, within(1e-5));
        assertThat(1e5 * read(point, 1.41, 0.001).of(Hypothesis.HEALTHY)).isCloseTo(0, within(1e-5));
    }

    /** A loop that was filled under the air pressure may still have lost water: 0.2 bar below the window are kept for that. */
    @Test
    void aWindowUnderTheAirLeavesRoomBelow() {
        InstalledSystem deep = new InstalledSystem(
                SomeSystem.SMALL.loop(),
                SomeSystem.SMALL.contentsError(),
                SomeSystem.SMALL.nominal(),
                GaugePressure.bar(-0.6),
                GaugePressure.bar(-0.5),
                GaugePressure.bar(-0.3),
                SomeSystem.SMALL.fill(),
                SomeSystem.SMALL.relief(),
                SomeSystem.SMALL.designCold(),
                SomeSystem.SMALL.designHot(),
                SomeSystem.SMALL.atmosphere());
        assertThat(1e5 * read(deep, -0.6, 0.001).of(Hypothesis.SHORT_OF_WATER)).isCloseTo(5, within(1e-5));
    }

    private static InstalledSystem filled(InstalledSystem system, UnaryOperator<GaugePressure> fill) {
        return new InstalledSystem(
                system.loop(),
                system.contentsError(),
                system.nominal(),
                system.charge(),
                fill.apply(system.lowestFill()),
                fill.apply(system.highestFill()),
                system.fill(),
                system.relief(),
                system.designCold(),
                system.designHot(),
                system.atmosphere());
    }
}
