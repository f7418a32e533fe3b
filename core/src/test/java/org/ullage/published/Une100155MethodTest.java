package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Caution;

class Une100155MethodTest {

    private static final Temperature TEN = Temperature.celsius(10);

    @ParameterizedTest
    @CsvSource({
        // degC, C_e as course notes print it, one unit of its last digit: 30 and 90 degC are printed rounded up
        "30, 0.00328, 0.00001",
        "50, 0.0105, 0.00005",
        "60, 0.0151, 0.00005",
        "80, 0.0262, 0.00005",
        "90, 0.0328, 0.0001"
    })
    void coefficientMeetsThePrintedList(double celsius, double printed, double rounding) {
        assertThat(coefficient(Methods.UNE_100155, celsius)).isCloseTo(printed, within(rounding));
    }

    @Test
    void coefficientIsTheFormulaOfTheStandard() {
        // (3.24 x 70^2 + 102.13 x 70 - 2708.3) 1e-6
        assertThat(coefficient(Methods.UNE_100155, 70)).isCloseTo(0.0203168, within(1e-12));
    }

    @Test
    void pressuresAreAbsoluteWithAnAtmosphereOfOneBar() {
        Sizing sizing = Methods.UNE_100155.size(
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(80)));
        double cold = 0.980665 + 0.3 + 1;
        assertThat(sizing.requiredVolume().in(Units.LITRE)).isCloseTo(26.1981 * 4 / (4 - cold), within(1e-9));
    }

    @Test
    void trainingExampleComesOutLargerThanPrintedBecauseThatUsedGaugePressures() {
        // printed: 323 L, C_e 0.026, valve 3 bar, 1.5 bar cold: 17 L; with absolute pressures 22.4 L
        PressureInputs pressures =
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(1.5)).withReliefSetting(GaugePressure.bar(3));
        SizingJob job =
                Jobs.with(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(80)), pressures);
        assertThat(Methods.UNE_100155.size(job).requiredVolume().in(Units.LITRE) * 0.323 * 0.026 / 0.0261981)
                .isCloseTo(22.4, within(0.05));
    }

    @Test
    void coldPressureHasAFloorOfOneAndAHalfBarAbsolute() {
        PressureInputs low =
                PressureInputs.NONE.withStaticHead(Length.metres(1)).withReliefSetting(GaugePressure.bar(3));
        SizingJob job = Jobs.with(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(80)), low);
        assertThat(Methods.UNE_100155.size(job).coldPressure().in(Units.BAR)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void marginIsTheLowerOfTheTwoRemembered() {
        assertThat(finalBar(3)).isCloseTo(2.65, within(1e-12));
        assertThat(finalBar(5)).isCloseTo(4.5, within(1e-12));
    }

    private static double finalBar(double setting) {
        PressureInputs pressures = Jobs.HOUSE_BLOCK.withReliefSetting(GaugePressure.bar(setting));
        SizingJob job =
                Jobs.with(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(80)), pressures);
        return Methods.UNE_100155_MARGIN.size(job).finalPressure().in(Units.BAR);
    }

    @Test
    void chilledWaterCountsNoLessThanFourPerMille() {
        assertThat(coefficient(Methods.UNE_100155_CHILLED, 20)).isEqualTo(0.004);
        assertThat(coefficient(Methods.UNE_100155_CHILLED, 30)).isEqualTo(0.004);
        assertThat(coefficient(Methods.UNE_100155_CHILLED, 35)).isCloseTo(0.00483525, within(1e-12));
        assertThat(texts(Methods.UNE_100155_CHILLED, 20)).anyMatch(text -> text.contains("least expansion"));
        assertThat(texts(Methods.UNE_100155_CHILLED, 35)).noneMatch(text -> text.contains("least expansion"));
        assertThat(workings(Methods.UNE_100155_CHILLED, 20)).contains("C_e_min");
        assertThat(workings(Methods.UNE_100155_CHILLED, 35)).contains("c0 + c1 * T");
        SizingJob mixture = Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), TEN, Temperature.celsius(35));
        assertThat(Methods.UNE_100155_CHILLED.size(mixture).warnings())
                .anyMatch(caution -> caution.text().contains("test mixture expands more"));
        assertThat(Methods.UNE_100155_CHILLED.toString()).contains("at least 0.004");
    }

    @ParameterizedTest
    @CsvSource({"29", "121"})
    void outsideThirtyToAHundredAndTwentyDegreesIsRefused(double celsius) {
        assertThatThrownBy(() -> coefficient(Methods.UNE_100155, celsius))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("from 30 degC")
                .hasMessageContaining("to 120 degC");
    }

    @Test
    void warmWaterThatMayBeChilledAndMixturesWarn() {
        assertThat(texts(Methods.UNE_100155, 40)).anyMatch(text -> text.contains("une-100155-chilled"));
        assertThat(texts(Methods.UNE_100155, 60)).noneMatch(text -> text.contains("une-100155-chilled"));
        SizingJob mixture = Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), TEN, Temperature.celsius(80));
        assertThat(Methods.UNE_100155.size(mixture).warnings())
                .anyMatch(caution -> caution.text().contains("test mixture expands more"));
    }

    @Test
    void rememberedGlycolFactor() {
        // G = 30: a = 20.0437, b = -0.5030; 80 degC is 176 degF
        UneGlycolExpansion thirty = new UneGlycolExpansion(VolumeFraction.percent(30));
        double a = -0.0134 * (900 - 143.8 * 30 + 1918.2);
        double b = 3.5e-4 * (900 - 94.57 * 30 + 500);
        double factor = a * Math.pow(176, b);
        assertThat(factor).isCloseTo(1.488, within(0.0005));
        assertThat(thirty.factor(Temperature.celsius(80))).isCloseTo(factor, within(1e-12));
        Method house = Methods.UNE_100155.with(thirty);
        assertThat(coefficient(house, 80)).isCloseTo(0.0261981 * factor, within(1e-12));
        assertThat(workings(house, 80))
                .contains("e * f")
                .contains("30 vol% glycol")
                .contains("0.0261981");
        assertThat(texts(house, 80))
                .anyMatch(text -> text.contains("not confirmed"))
                .anyMatch(text -> text.contains("holds water"));
    }

    @Test
    void glycolFactorIsRefusedOutsideItsRange() {
        UneGlycolExpansion thirty = new UneGlycolExpansion(VolumeFraction.percent(30));
        assertThatThrownBy(() -> thirty.factor(Temperature.celsius(64))).hasMessageContaining("from 65 degC");
        assertThatThrownBy(() -> thirty.factor(Temperature.celsius(116))).hasMessageContaining("to 115 degC");
        assertThatThrownBy(() -> new UneGlycolExpansion(VolumeFraction.percent(19)))
                .hasMessageContaining("from 20 vol%");
        assertThatThrownBy(() -> new UneGlycolExpansion(VolumeFraction.percent(51)))
                .hasMessageContaining("to 50 vol%");
    }

    private static double coefficient(Method method, double celsius) {
        return size(method, celsius).expansionVolume().in(Units.LITRE) / 1000;
    }

    private static List<String> texts(Method method, double celsius) {
        return size(method, celsius).warnings().stream().map(Caution::text).toList();
    }

    private static String workings(Method method, double celsius) {
        return size(method, celsius).workings().text(UnitSystem.SI);
    }

    private static Sizing size(Method method, double celsius) {
        PressureInputs high =
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(1)).withFinalPressure(GaugePressure.bar(6));
        return method.size(
                Jobs.with(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(celsius)), high));
    }

    @Test
    void glycolFactorReachesToTheEndsOfItsRange() {
        for (double percent : new double[] {20, 50}) {
            UneGlycolExpansion rule = new UneGlycolExpansion(VolumeFraction.percent(percent));
            assertThat(rule.factor(Temperature.celsius(65))).isGreaterThan(1);
            assertThat(rule.factor(Temperature.celsius(115))).isGreaterThan(1);
        }
    }

    @Test
    void noRuleOfThisStandardAsksForTheColdTemperature() {
        PressureInputs stated =
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(1)).withFinalPressure(GaugePressure.bar(3));
        Method glycol = Methods.UNE_100155.with(new UneGlycolExpansion(VolumeFraction.percent(30)));
        for (Method method : List.of(Methods.UNE_100155, Methods.UNE_100155_CHILLED, glycol)) {
            for (TestFluid fluid : List.of(TestFluid.WATER, TestFluid.MIXTURE)) {
                SizingJob job = Jobs.steel(fluid, VesselType.bladder(), null, Temperature.celsius(80));
                assertThat(method.size(Jobs.with(job, stated)).requiredVolume().si())
                        .isPositive();
            }
        }
    }

    @Test
    void rangeIncludesItsEnds() {
        assertThat(coefficient(Methods.UNE_100155, 30)).isPositive();
        assertThat(coefficient(Methods.UNE_100155, 120)).isPositive();
    }
}
