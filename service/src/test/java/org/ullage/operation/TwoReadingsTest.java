package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.ullage.loop.Contents;
import org.ullage.loop.ContentsBasis;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * Contents from two readings. The test fluid grows by 0.0005 per kelvin of its volume at 0 degC; air at 1 bar keeps the numbers
 * round.
 */
class TwoReadingsTest {

    private static final AbsolutePressure ONE_BAR = AbsolutePressure.bar(1);
    private static final SoundVessel VESSEL = new SoundVessel(Volume.litres(100), GaugePressure.bar(0.5), ONE_BAR);
    private static final Reading COLD = reading(1.0, 0);
    private static final Reading HOT = reading(2.0, 80);
    private static final ReadingErrors EXACT = errors(0, 0, 0, 0);

    private static Reading reading(double bar, double celsius) {
        return new Reading(GaugePressure.bar(bar), Temperature.celsius(celsius));
    }

    private static ReadingErrors errors(double bar, double kelvins, double chargeBar, double litres) {
        return new ReadingErrors(
                PressureDifference.bar(bar),
                TemperatureDifference.kelvins(kelvins),
                PressureDifference.bar(chargeBar),
                Volume.litres(litres));
    }

    private static TwoReadings rigid(Reading cold, Reading hot) {
        return TwoReadings.of(cold, hot, VESSEL, TestFluid.WATER, PipeMaterial.RIGID);
    }

    @Test
    void byHand() {
        TwoReadings readings = rigid(COLD, HOT);
        // 100 L x 1.5 x (1/2 - 1/3) = 25 L; 80 K x 0.0005/K = 0.04; 25 L / 0.04 = 625 L
        assertThat(readings.waterTakenIn().in(Units.LITRE)).isCloseTo(25, within(1e-9));
        assertThat(readings.netExpansion()).isCloseTo(0.04, within(1e-12));
        Contents contents = readings.contents(EXACT);
        assertThat(contents.typical().in(Units.LITRE)).isCloseTo(625, within(1e-6));
        assertThat(contents.range().isSingle()).isTrue();
        assertThat(contents.basis()).isEqualTo(ContentsBasis.TWO_READINGS);
    }

    @Test
    void steelGrowsWithTheFluid() {
        TwoReadings readings = TwoReadings.of(COLD, HOT, VESSEL, TestFluid.WATER, PipeMaterial.STEEL);
        // 0.04 - 3 x 11.7e-6/K x 80 K = 0.037192
        assertThat(readings.netExpansion()).isCloseTo(0.037192, within(1e-12));
        assertThat(readings.contents(EXACT).typical().in(Units.LITRE)).isCloseTo(25 / 0.037192, within(1e-6));
    }

    @Test
    void eachErrorByHand() {
        TwoReadings readings = rigid(COLD, HOT);
        var parts = readings.contributions(errors(0.02, 1, 0.05, 2));
        // small errors: dV/dp_1 = V_n p_0 / p_1^2 / e = 100 x 1.5 / 4 / 0.04 = 937.5 L/bar
        assertThat(parts.get(ReadingInput.COLD_PRESSURE).in(Units.LITRE)).isCloseTo(18.75, within(0.01));
        assertThat(parts.get(ReadingInput.HOT_PRESSURE).in(Units.LITRE)).isCloseTo(8.333, within(0.01));
        assertThat(parts.get(ReadingInput.CHARGE).in(Units.LITRE)).isCloseTo(625 * 0.05 / 1.5, within(0.01));
        assertThat(parts.get(ReadingInput.NOMINAL_VOLUME).in(Units.LITRE)).isCloseTo(12.5, within(0.01));
        assertThat(parts.get(ReadingInput.HOT_TEMPERATURE).in(Units.LITRE)).isCloseTo(625 / 80.0, within(0.01));
        Contents contents = readings.contents(errors(0.02, 1, 0.05, 2));
        double root = Math.sqrt(parts.values().stream()
                .mapToDouble(part -> Math.pow(part.in(Units.LITRE), 2))
                .sum());
        assertThat(contents.high().in(Units.LITRE)).isCloseTo(625 + root, within(1e-6));
        assertThat(contents.low().in(Units.LITRE)).isCloseTo(625 - root, within(1e-6));
        assertThat(contents.cautions().get(1).text())
                .contains("The largest single uncertainty, 21 L, comes from the gas charge");
    }

    @Test
    void coolWaterInTheVesselIsSaid() {
        assertThat(rigid(COLD, HOT).contents(EXACT).cautions().get(0).text()).contains("up to 4 % larger");
    }

    @Test
    void workingsLeadToTheContents() {
        String text = rigid(COLD, HOT).workings().text(UnitSystem.SI);
        assertThat(text)
                .contains("V_n * p_0 * (1 / p_1 - 1 / p_2)")
                .contains("= 100 L * 1.5 bar abs * (1 / 2 bar abs - 1 / 3 bar abs)")
                .contains("= 25 L / 0.04")
                .contains("= 625 L");
    }

    @Test
    void aChargeAtTheColdPressureIsAllowed() {
        SoundVessel charged = new SoundVessel(Volume.litres(100), GaugePressure.bar(1), ONE_BAR);
        TwoReadings readings = TwoReadings.of(COLD, HOT, charged, TestFluid.WATER, PipeMaterial.RIGID);
        assertThat(readings.contents(errors(0.05, 1, 0.05, 0)).low()).isLessThan(Volume.litres(100.0 / 3 / 0.04));
    }

    @Test
    void readingsOutOfOrder() {
        refused(
                () -> rigid(HOT, COLD),
                "hot temperature 0 degC (32 degF) is not allowed: it must be above the cold temperature");
        refused(
                () -> rigid(COLD, reading(2.0, 0)),
                "hot temperature 0 degC (32 degF) is not allowed: it must be above the cold temperature");
        refused(() -> rigid(COLD, reading(1.0, 80)), "final pressure 2 bar abs");
        refused(() -> rigid(reading(0.4, 0), HOT), "gas charge 1.5 bar abs");
        refused(() -> new SoundVessel(Volume.litres(0), GaugePressure.bar(1), ONE_BAR), "nominal volume 0 L");
    }

    @Test
    void pipeThatGrowsMoreThanTheFluid() {
        PipeMaterial growing = new PipeMaterial("test", LinearExpansion.perKelvin(2e-4), TestFluid.WATER.source());
        refused(
                () -> TwoReadings.of(COLD, HOT, VESSEL, TestFluid.WATER, growing),
                "net expansion between the readings -0.8 % is not allowed: it must be above zero");
    }

    @Test
    void errorsThatDrownTheReadings() {
        TwoReadings close = rigid(COLD, reading(1.05, 4));
        refused(() -> close.contents(errors(0.05, 0, 0, 0)), "error of the cold pressure 0.05 bar is not allowed");
        refused(() -> close.contents(errors(0, 4, 0, 0)), "error of the cold temperature 4 K");
        refused(() -> close.contents(errors(0.045, 0, 1.4, 60)), "lowest contents -");
        refused(() -> errors(-0.01, 0, 0, 0), "error of the pressure readings -0.01 bar is not allowed");
        refused(() -> errors(0, -1, 0, 0), "error of the temperature readings -1 K");
        refused(() -> errors(0, 0, -1, 0), "error of the gas charge -1 bar");
        refused(() -> errors(0, 0, 0, -1), "error of the nominal volume -1 L");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(OutOfRangeException.class).hasMessageStartingWith(message);
    }
}
