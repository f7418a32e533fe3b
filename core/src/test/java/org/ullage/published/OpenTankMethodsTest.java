package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Caution;

class OpenTankMethodsTest {

    @Test
    void frenchTankTakesTheExpansionToTheMean() {
        assertThat(litres(Methods.PRACTICE_FR_OPEN, Temperature.celsius(10), 80))
                .isCloseTo(1000 * (1.035 / 1.005 - 1), within(1e-9));
    }

    @Test
    void hungarianTankCountsFromTenDegreesToTheMean() {
        // 90/70: mean 80, 0.00043 x 70 = 3.01 %
        assertThat(litres(Methods.PRACTICE_HU_OPEN, null, 90)).isCloseTo(30.1, within(1e-9));
        assertThat(litres(Methods.PRACTICE_HU_OPEN, Temperature.celsius(5), 90)).isCloseTo(30.1, within(1e-9));
        assertThat(texts(Methods.PRACTICE_HU_OPEN, Temperature.celsius(40), 90))
                .anyMatch(text -> text.contains("from 10 degC"));
        assertThat(Methods.PRACTICE_HU_OPEN.toString()).contains("0.00043 1/K x rise from 10 degC");
    }

    @Test
    void chineseTankCountsTheLoopsOwnRise() {
        assertThat(litres(Methods.PRACTICE_CN_OPEN, Temperature.celsius(7), 32)).isCloseTo(15, within(1e-9));
        assertThat(texts(Methods.PRACTICE_CN_OPEN, Temperature.celsius(7), 32))
                .anyMatch(text -> text.contains("too high"));
        assertThatThrownBy(() -> litres(Methods.PRACTICE_CN_OPEN, null, 32)).isInstanceOf(MissingInputException.class);
        assertThat(Methods.PRACTICE_CN_OPEN.toString()).contains("rise from the lowest temperature");
    }

    @ParameterizedTest
    @CsvSource({"80, 31", "95, 31", "96, 38", "110, 38", "130, 43"})
    void chineseHeatingTakesTheNextHotterRow(double hot, double litres) {
        assertThat(litres(Methods.PRACTICE_CN_OPEN_HEATING, null, hot)).isCloseTo(litres, within(1e-9));
    }

    @Test
    void chineseHeatingSaysWhichRowAndThatItMayBoil() {
        assertThat(texts(Methods.PRACTICE_CN_OPEN_HEATING, null, 100))
                .anyMatch(text -> text.contains("0.038 up to 110 degC"))
                .anyMatch(text -> text.contains("would boil"));
        assertThat(texts(Methods.PRACTICE_CN_OPEN_HEATING, null, 95))
                .noneMatch(text -> text.contains("next hotter"))
                .noneMatch(text -> text.contains("would boil"));
        assertThatThrownBy(() -> litres(Methods.PRACTICE_CN_OPEN_HEATING, null, 131))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("130 degC");
    }

    @Test
    void otherRulesRefuseAnOpenLoopThatWouldBoil() {
        assertThatThrownBy(() -> litres(Methods.PRACTICE_CN_OPEN, Temperature.celsius(10), 110))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("below boiling");
        // nor does the Chinese list let a closed vessel boil
        Method closed = Methods.MASS_BALANCE.with(PipeCredit.NONE).with(Methods.PRACTICE_CN_OPEN_HEATING.expansion());
        SizingJob hot = Jobs.steel(TestFluid.WATER, VesselType.bladder(), null, Temperature.celsius(130));
        assertThat(closed.size(hot).requiredVolume().si()).isPositive();
        SizingJob boiling = Jobs.with(hot, Jobs.HOUSE_BLOCK.withReliefSetting(GaugePressure.bar(1.9)));
        assertThatThrownBy(() -> closed.size(boiling)).hasMessageContaining("below boiling");
    }

    @Test
    void workingsEndInTheTank() {
        String text = size(Methods.PRACTICE_CN_OPEN, Temperature.celsius(7), 32)
                .workings()
                .text(UnitSystem.SI);
        assertThat(text).contains("0.0006 1/K * 25 K", "V_x * k_open");
        assertThat(size(Methods.PRACTICE_CN_OPEN_HEATING, null, 95).workings().text(UnitSystem.SI))
                .contains("0.031 up to 95 degC");
    }

    @Test
    void rulesForWaterWarnOfMixtures() {
        for (Method method : List.of(Methods.PRACTICE_CN_OPEN, Methods.PRACTICE_CN_OPEN_HEATING)) {
            SizingJob job =
                    Jobs.steel(TestFluid.MIXTURE, VesselType.open(), Temperature.celsius(10), Temperature.celsius(60));
            assertThat(method.size(job).warnings())
                    .anyMatch(caution -> caution.text().contains("test mixture expands more"));
        }
    }

    @Test
    void closedVesselsAreRefused() {
        SizingJob job = Jobs.steel(TestFluid.WATER, VesselType.bladder(), null, Temperature.celsius(80));
        assertThatThrownBy(() -> Methods.PRACTICE_CN_OPEN_HEATING.size(job))
                .hasMessageContaining("vessel kind bladder");
    }

    private static double litres(Method method, @Nullable Temperature cold, double hot) {
        return size(method, cold, hot).requiredVolume().in(Units.LITRE);
    }

    private static List<String> texts(Method method, @Nullable Temperature cold, double hot) {
        return size(method, cold, hot).warnings().stream().map(Caution::text).toList();
    }

    private static Sizing size(Method method, @Nullable Temperature cold, double hot) {
        LoopTemperatures temperatures =
                LoopTemperatures.between(cold, Temperature.celsius(hot)).withMean(Temperature.celsius(hot - 10));
        return method.size(
                new SizingJob(Jobs.loop(TestFluid.WATER), VesselType.open(), temperatures, PressureInputs.NONE));
    }
}
