package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Governing;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/** The example of the ASIT-IDAE guide 022, p. 88: 20 collectors of 1.5 L, 10 L of pipe above, 20 L below, 5 L in the exchanger. */
class SolarMethodsTest {

    private static final Loop LOOP = Loop.withContents(Volume.litres(65))
            .rigid()
            .filledWith(TestFluid.MIXTURE)
            .stagnating(new StagnationContents(Volume.litres(30), Volume.litres(10)));

    private static final PressureInputs VESSEL_LOW =
            PressureInputs.NONE.withColdPressure(GaugePressure.bar(2.7)).withFinalPressure(GaugePressure.bar(5.4));

    private static SizingJob job(PressureInputs pressures) {
        return new SizingJob(LOOP, VesselType.bladder(), LoopTemperatures.between(null, null), pressures);
    }

    @ParameterizedTest
    @CsvSource({"idae-022, 48.5, 115", "ufc-3-440-01, 40, 95", "en-12977-1, 38.5, 91", "practice-fr-solar, 41.5, 98"})
    void usefulAndNominalVolumeToTheirPrintedDigits(String name, double useful, double vessel) {
        // computed for this loop with p_M 5.4 and p_m 2.7 bar gauge, charge equal to p_m; whole litres
        Sizing sizing = Methods.named(name).size(job(VESSEL_LOW.withPreCharge(GaugePressure.bar(2.7))));
        assertThat(sizing.acceptanceVolume().in(Units.LITRE)).isCloseTo(useful, within(0.05));
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(vessel, within(0.5));
    }

    @Test
    void guideRoundsItsFactorBeforeItGoesOn() {
        // printed 114.9 L = 48.5 L x 2.37; unrounded 48.525 x 6.4/2.7
        Sizing sizing = Methods.IDAE_022.size(job(VESSEL_LOW));
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(48.525 * 6.4 / 2.7, within(1e-9));
        assertThat(sizing.vapourVolume()).isEqualTo(Volume.litres(40));
    }

    @Test
    void vesselOnTopWorksBetweenLowerPressures() {
        // the same page: the vessel on top works between 1.5 and 5.4 bar; C_P = 6.4/3.9 = 1.64 is below 2, so 2 counts
        Sizing sizing = Methods.IDAE_022.size(job(PressureInputs.NONE
                .withColdPressure(GaugePressure.bar(1.5))
                .withFinalPressure(GaugePressure.bar(5.4))));
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(2 * 48.525, within(1e-9));
        assertThat(sizing.governing()).isEqualTo(Governing.LEAST_VOLUME);
        assertThat(Methods.IDAE_022.size(job(VESSEL_LOW)).governing()).isEqualTo(Governing.GAS_LAW);
        assertThat(sizing.workings().text(UnitSystem.SI)).contains("max(1 / (p_0 / p_i - p_0 / p_f), C_p)");
    }

    @Test
    void pressuresFollowFromHeadAndSettingAsInTheGuide() {
        Sizing sizing = Methods.IDAE_022.size(
                job(PressureInputs.NONE.withStaticHead(Length.metres(12)).withReliefSetting(GaugePressure.bar(6))));
        assertThat(sizing.coldPressure().in(Units.BAR)).isCloseTo(1.5 + 1.2 * 0.980665, within(1e-9));
        assertThat(sizing.finalPressure().in(Units.BAR)).isCloseTo(5.4, within(1e-9));
    }

    @Test
    void ufcStartsWithLiquidInTheVessel() {
        Sizing sizing = Methods.UFC_3_440_01.size(job(VESSEL_LOW));
        assertThat(sizing.coldPressure().minus(sizing.preCharge()).in(Units.PSI))
                .isCloseTo(5, within(1e-6));
        assertThat(sizing.expansionVolume()).isEqualTo(Volume.litres(0));
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isGreaterThan(95);
    }

    @Test
    void hotLoopsAreNotRefusedForBoiling() {
        SizingJob hot = new SizingJob(
                LOOP,
                VesselType.bladder(),
                LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(190)),
                VESSEL_LOW);
        assertThat(Methods.EN_12977_1.size(hot).requiredVolume().in(Units.LITRE))
                .isCloseTo(91.3, within(0.1));
    }

    @Test
    void hotFluidBreaksDown() {
        assertThat(degradationWarnings(151)).isTrue();
        assertThat(degradationWarnings(149)).isFalse();
    }

    private static boolean degradationWarnings(double celsius) {
        LoopTemperatures upTo = LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(celsius));
        SizingJob job = new SizingJob(LOOP, VesselType.bladder(), upTo, VESSEL_LOW);
        return Methods.IDAE_022.size(job).warnings().stream()
                .anyMatch(caution -> caution.text().contains("break down"));
    }

    @Test
    void ruleWithoutVapourSaysWhatItLeavesOut() {
        LoopTemperatures liquid = LoopTemperatures.between(Temperature.celsius(-10), Temperature.celsius(120));
        SizingJob job = new SizingJob(LOOP, VesselType.bladder(), liquid, VESSEL_LOW);
        assertThat(Methods.ASHRAE.size(job).warnings())
                .anyMatch(caution -> caution.text().contains("in stagnation, up to 40 L"))
                .anyMatch(caution -> caution.text().contains("membrane should not be at 0 degC or below"));
        assertThat(Methods.IDAE_022.size(job).warnings())
                .noneMatch(caution -> caution.text().contains("in stagnation, up to"));
    }

    @Test
    void missingCollectorsAreAskedFor() {
        Loop plain = Loop.withContents(Volume.litres(65)).rigid().filledWith(TestFluid.MIXTURE);
        assertThatThrownBy(() -> Methods.IDAE_022.size(job(VESSEL_LOW).with(plain)))
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("contents of the collectors");
        assertThatThrownBy(() -> new StagnationContents(Volume.litres(-1), Volume.litres(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("collector contents -1 L");
    }

    @Test
    void workingsShowTheVapour() {
        String text = Methods.IDAE_022.size(job(VESSEL_LOW)).workings().text(UnitSystem.SI);
        assertThat(text).contains("f_c * V_c + V_p", "V_e + V_wr + V_vap", "8.");
        assertThat(Methods.IDAE_022.size(job(VESSEL_LOW)).warnings())
                .anyMatch(caution -> caution.text().contains("70 degC"));
    }

    @Test
    void vapourReachesAsFarAsThePipesLoseItsPower() {
        Length reach = SteamRange.of(20, SteamRange.BADLY_EMPTYING, Power.of(25, Units.WATT));
        assertThat(reach.in(Units.METRE)).isCloseTo(80, within(1e-9));
        assertThatThrownBy(() -> SteamRange.of(-1, SteamRange.WELL_EMPTYING, Power.of(25, Units.WATT)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SteamRange.of(1, SteamRange.WELL_EMPTYING, Power.of(0, Units.WATT)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
