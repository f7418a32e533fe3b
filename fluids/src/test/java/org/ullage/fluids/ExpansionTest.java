package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;
import static org.ullage.quantity.Temperature.fahrenheit;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

/** Expansion, coefficient, series and printed table. */
class ExpansionTest {

    private static final GlycolSolution FLUID = Glycol.PROPYLENE.by(GlycolModel.ASHRAE, vol(30));

    @Test
    void fromTwoPrintedDensities() {
        Expansion expansion = Expansion.between(FLUID, celsius(10), celsius(80));
        assertThat(expansion.ratio()).isCloseTo(1032.55 / 992.42, within(1e-12));
        assertThat(expansion.fraction()).isCloseTo(1032.55 / 992.42 - 1, within(1e-12));
        assertThat(expansion.percent()).isCloseTo(4.0437, within(1e-4));
        assertThat(expansion.meanCoefficientPerKelvin()).isCloseTo(0.040437 / 70, within(1e-8));
        assertThat(expansion.fromDensity().si()).isCloseTo(1032.55, within(1e-9));
        assertThat(expansion.toDensity().si()).isCloseTo(992.42, within(1e-9));
        assertThat(expansion.fromPressure()).isEqualTo(AbsolutePressure.bar(3));
        assertThat(expansion)
                .hasToString(
                        "propylene glycol 30 vol% by ASHRAE Handbook table at 30 vol%, 10 degC to 80 degC: 4.044 %");
    }

    @Test
    void coolingContracts() {
        assertThat(Expansion.between(FLUID, celsius(60), celsius(20)).percent()).isNegative();
    }

    @Test
    void pressureMattersWhereTheModelHasIt() {
        Expansion atRest = Expansion.between(
                Water.IAPWS_IF97, celsius(10), AbsolutePressure.bar(2), celsius(80), AbsolutePressure.bar(2));
        Expansion rising = Expansion.between(
                Water.IAPWS_IF97, celsius(10), AbsolutePressure.bar(2), celsius(80), AbsolutePressure.bar(4));
        // compressibility of water is 4.6e-10 per pascal
        assertThat(atRest.fraction() - rising.fraction()).isCloseTo(4.6e-10 * 2e5, within(0.1e-4));
        assertThat(rising.toPressure()).isEqualTo(AbsolutePressure.bar(4));
    }

    @Test
    void hotWaterIsHeldLiquid() {
        Expansion expansion = Expansion.between(Water.IAPWS_IF97, celsius(10), celsius(170));
        assertThat(expansion.toPressure().in(Units.KILOPASCAL)).isCloseTo(792.05, within(0.01));
    }

    @Test
    void refusals() {
        Expansion none = Expansion.between(FLUID, celsius(20), celsius(20));
        assertThat(none.percent()).isZero();
        assertThatThrownBy(none::meanCoefficientPerKelvin)
                .hasMessage("temperature difference 0.0 K is not allowed: it must be other than zero for a mean"
                        + " coefficient of expansion; give two different temperatures");
        assertThatThrownBy(() -> FluidSeries.of(FLUID, celsius(0), celsius(10), 0))
                .hasMessage("number of steps 0 steps is not allowed: it must be 1 to 100000; give a number in that"
                        + " range");
        assertThatThrownBy(() -> FluidSeries.of(FLUID, celsius(0), celsius(130), 10))
                .hasMessageContaining("temperature of propylene glycol 30 vol% 130 degC");
    }

    @Test
    void series() {
        FluidSeries series = FluidSeries.of(FLUID, celsius(0), celsius(100), 4);
        assertThat(series.fluid()).isSameAs(FLUID);
        assertThat(series.celsius()).containsExactly(new double[] {0, 25, 50, 75, 100}, within(1e-12));
        assertThat(series.kelvins()[4]).isEqualTo(373.15);
        assertThat(series.densities())
                .containsExactly(new double[] {1036.24, 1026.06, 1012.69, 996.12, 976.36}, within(1e-9));
        assertThat(series.expansionPercents()[0]).isZero();
        assertThat(series.expansionPercents()[4]).isCloseTo(100 * (1036.24 / 976.36 - 1), within(1e-9));
    }

    @Test
    void seriesAsText() {
        FluidSeries series = FluidSeries.of(FLUID, celsius(10), celsius(80), 2);
        assertThat(series.text(UnitSystem.SI))
                .isEqualTo("propylene glycol 30 vol%\nASHRAE Handbook table at 30 vol% " + FLUID.source() + "\n"
                        + "temperature [degC]  density [kg/m3]  expansion [%]\n"
                        + "10.00               1032.55          0.000\n"
                        + "45.00               1015.62          1.667\n"
                        + "80.00               992.42           4.044\n");
        assertThat(FluidSeries.of(FLUID, fahrenheit(50), fahrenheit(176), 1)
                        .csv(UnitSystem.IP)
                        .split("\r\n", -1))
                .containsExactly(
                        "temperature [degF],density [lb/ft3],expansion [%]",
                        "50.00,64.460,0.000", "176.00,61.955,4.044", "");
    }
}
