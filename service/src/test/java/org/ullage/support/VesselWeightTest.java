package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.method.TestFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Density;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class VesselWeightTest {

    private static final VesselWeight EIGHTY =
            new VesselWeight(Volume.litres(80), ShellMass.fromPlate(Mass.kilograms(14.3)), ContainedFluid.WATER);

    /** The tolerances are half a unit of the last printed digit. */
    @ParameterizedTest
    @CsvFileSource(resources = "vessel-weights.tsv", delimiter = '\t', useHeadersInDisplayName = true)
    void tabulatedWeights(
            double litres,
            double bar,
            double wall,
            double shell,
            double water,
            double total,
            double pounds,
            double support) {
        ShellEstimate estimate = new ShellEstimate(Volume.litres(litres), GaugePressure.bar(bar));
        VesselWeight weight = new VesselWeight(Volume.litres(litres), estimate.shellMass(), ContainedFluid.WATER);
        assertThat(estimate.wall().in(Units.MILLIMETRE)).isCloseTo(wall, within(0.00501));
        assertThat(weight.empty().in(Units.KILOGRAM)).isCloseTo(shell, within(0.0501));
        assertThat(weight.waterlogged().minus(weight.empty()).in(Units.KILOGRAM))
                .isCloseTo(water, within(0.0501));
        assertThat(weight.waterlogged().in(Units.KILOGRAM)).isCloseTo(total, within(0.0501));
        assertThat(weight.waterlogged().in(Units.POUND)).isCloseTo(pounds, within(0.501));
        assertThat(weight.twiceFilled().in(Units.KILOGRAM)).isCloseTo(support, within(0.0501));
    }

    @Test
    void emptyInUseAndWaterlogged() {
        assertThat(EIGHTY.empty()).isEqualTo(Mass.kilograms(14.3));
        assertThat(EIGHTY.normal(Volume.litres(10)).in(Units.KILOGRAM)).isCloseTo(14.3 + 9.982, within(1e-9));
        assertThat(EIGHTY.normal(Volume.litres(0))).isEqualTo(EIGHTY.empty());
        assertThat(EIGHTY.waterlogged().in(Units.KILOGRAM)).isCloseTo(14.3 + 79.856, within(1e-9));
    }

    @Test
    void bothSystemsAreOneAnswer() {
        VesselWeight given = new VesselWeight(
                Volume.gallons(10),
                ShellMass.fromPlate(Mass.pounds(20)),
                ContainedFluid.of("mixture", Density.of(64, Units.POUND_PER_CUBIC_FOOT)));
        // 10 gal are 2310/1728 ft3.
        assertThat(given.waterlogged().in(Units.POUND)).isCloseTo(20 + 64 * 2310.0 / 1728, within(1e-9));
    }

    @Test
    void theFluidModelGivesTheDensity() {
        ContainedFluid fluid =
                ContainedFluid.of(TestFluid.MIXTURE, Temperature.celsius(20), AbsolutePressure.STANDARD_ATMOSPHERE);
        assertThat(fluid.density().si()).isCloseTo(1000 / 1.01, within(1e-9));
        assertThat(fluid.name()).isEqualTo("test mixture at 20 degC by straight line");
    }

    @Test
    void anEstimateSaysSo() {
        ShellMass shell = new ShellEstimate(Volume.litres(80), GaugePressure.bar(10)).shellMass();
        assertThat(new VesselWeight(Volume.litres(80), shell, ContainedFluid.WATER).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("rough estimate"));
        assertThat(EIGHTY.cautions())
                .noneSatisfy(caution -> assertThat(caution.text()).contains("estimate"));
        assertThat(EIGHTY.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("drain it before"));
    }

    @Test
    void textAndWorkings() {
        assertThat(EIGHTY.text(UnitSystem.SI))
                .isEqualTo(
                        "80 L vessel: empty 14.3 kg GIVEN, waterlogged 94.16 kg; support for twice that by UMC 1004.1:"
                                + " 188.3 kg");
        assertThat(EIGHTY.text(UnitSystem.IP)).contains("waterlogged 207.6 lb");
        assertThat(EIGHTY.workings().text(UnitSystem.SI))
                .contains("m_0 + V_n * rho", "14.3 kg + 80 L * 998.2 kg/m3", "94.156 kg", "UMC");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 80.1})
    void contentBeyondTheVesselIsRefused(double litres) {
        assertThatThrownBy(() -> EIGHTY.normal(Volume.litres(litres)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("content of the vessel");
    }

    @Test
    void nothingIsNoVessel() {
        assertThatThrownBy(() -> new VesselWeight(Volume.litres(0), EIGHTY.shell(), ContainedFluid.WATER))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ShellMass.fromPlate(Mass.kilograms(0))).isInstanceOf(OutOfRangeException.class);
    }
}
