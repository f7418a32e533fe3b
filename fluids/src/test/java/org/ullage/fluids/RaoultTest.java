package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.glycol;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Vapour pressure and boiling: the estimate, and the safe side that the fluid itself takes. */
class RaoultTest {

    private static RaoultEstimate estimate(String key, double massPercent) {
        return new RaoultEstimate(glycol(key), MassFraction.percent(massPercent));
    }

    @Test
    void everyRowOfTheEstimate() {
        NumberTable expected = NumberTable.read("expected-raoult.tsv");
        for (int row = 0; row < expected.size(); row++) {
            RaoultEstimate ours = estimate(expected.text(row, "glycol"), expected.number(row, "mass_pct"));
            Temperature temperature = celsius(expected.number(row, "t_degC"));
            assertThat(ours.waterMoleFraction()).isCloseTo(expected.number(row, "x_water"), within(0.6e-4));
            double kilopascals = ours.vapourPressure(temperature).in(Units.KILOPASCAL);
            assertThat(kilopascals).isCloseTo(expected.number(row, "p_raoult_kPa"), Percentage.withPercentage(0.01));
            double antoine = expected.number(row, "p_antoine_kPa");
            if (!Double.isNaN(antoine)) {
                assertThat(kilopascals).isCloseTo(antoine, Percentage.withPercentage(0.35));
            }
        }
    }

    @Test
    void everyBoilingPoint() {
        NumberTable expected = NumberTable.read("expected-boiling.tsv");
        for (int row = 0; row < expected.size(); row++) {
            Temperature ours = estimate(expected.text(row, "glycol"), expected.number(row, "mass_pct"))
                    .boilingPoint(AbsolutePressure.STANDARD_ATMOSPHERE);
            assertThat(ours.in(Units.CELSIUS)).isCloseTo(expected.number(row, "t_boil_raoult"), within(0.011));
        }
    }

    @Test
    void boilingUnderGaugePressure() {
        NumberTable expected = NumberTable.read("expected-solar-boiling.tsv");
        for (int row = 0; row < expected.size(); row++) {
            AbsolutePressure pressure = GaugePressure.of(expected.number(row, "p_psig"), Units.PSI)
                    .absolute(AbsolutePressure.STANDARD_ATMOSPHERE);
            assertThat(estimate("ethylene", 40).boilingPoint(pressure).in(Units.CELSIUS))
                    .isCloseTo(expected.number(row, "EG40"), within(0.06));
            assertThat(estimate("propylene", 40).boilingPoint(pressure).in(Units.CELSIUS))
                    .isCloseTo(expected.number(row, "PG40"), within(0.06));
        }
    }

    @Test
    void fluidTakesPureWaterBecauseItIsHigher() {
        GlycolSolution fluid = EthyleneGlycol.volumePercent(40);
        assertThat(fluid.vapourPressureSi(celsius(95).si()))
                .isEqualTo(Iapws97.saturationPressure(celsius(95).si()));
        assertThat(fluid.vapourPressureSi(celsius(-20).si())).isEqualTo(Iapws97.saturationPressure(273.15));
        assertThat(fluid.vapourPressureSource().toString())
                .contains("[COMPUTED]")
                .contains("safe side");
        assertThat(fluid.raoult().vapourPressure(celsius(95)).si())
                .isLessThan(fluid.vapourPressureSi(celsius(95).si()));
        assertThat(fluid.raoult().source().provenance()).isEqualTo(Provenance.COMPUTED);
        assertThat(fluid.raoult().caution().text()).contains("estimate");
    }

    @Test
    void liquidIsWhatPureWaterWouldBe() {
        GlycolSolution fluid = EthyleneGlycol.volumePercent(40);
        double boiling = fluid.vapourPressureSi(celsius(98).si());
        assertThat(fluid.isLiquidSi(celsius(98).si(), boiling * 1.001)).isTrue();
        assertThat(fluid.isLiquidSi(celsius(98).si(), boiling * 0.999)).isFalse();
        assertThat(fluid.isLiquidSi(celsius(-20).si(), 700)).isTrue();
        assertThatThrownBy(() -> fluid.isLiquidSi(celsius(101).si(), 1e6)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void refusals() {
        RaoultEstimate estimate =
                Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(40)).raoult();
        assertThatThrownBy(() -> estimate.vapourPressure(celsius(180.1)))
                .hasMessageContaining("0 degC to 180 degC for the estimate by Raoult's law");
        assertThatThrownBy(() -> estimate.boilingPoint(AbsolutePressure.bar(20)))
                .hasMessageContaining("pressure for the boiling point of propylene glycol 2000 kPa abs is not allowed");
        assertThatThrownBy(
                        () -> Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(40)).vapourPressure(celsius(126)))
                .hasMessageContaining("-15 degC to 125 degC");
    }

    @Test
    void temperatureLimits() {
        assertThat(Glycol.PROPYLENE
                        .maximumRecommendedTemperature()
                        .temperature()
                        .in(Units.FAHRENHEIT))
                .isEqualTo(250);
        assertThat(Glycol.ETHYLENE.temperatureLimits()).hasSize(2);
        assertThat(Glycol.PROPYLENE.temperatureLimits())
                .isSortedAccordingTo((a, b) -> a.temperature().compareTo(b.temperature()));
        assertThat(Glycol.ETHYLENE.degradationCaution(celsius(120))).isEmpty();
        assertThat(Glycol.ETHYLENE
                        .degradationCaution(celsius(125))
                        .orElseThrow()
                        .text())
                .startsWith("At 125 degC ethylene glycol degrades faster: 250 degF");
        assertThat(Glycol.ETHYLENE.maximumRecommendedTemperature().toString()).startsWith("121 degC: degradation");
    }

    @Test
    void boilingIsFoundUpToBothEndsOfTheEstimate() {
        RaoultEstimate estimate = estimate("propylene", 40);
        for (double end : new double[] {0, 180}) {
            AbsolutePressure boiling = estimate.vapourPressure(celsius(end));
            assertThat(estimate.boilingPoint(boiling).in(Units.CELSIUS)).isCloseTo(end, within(1e-6));
        }
    }
}
