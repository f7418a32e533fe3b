package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.fluids.Water;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/**
 * How the swing of a loop grows as its vessel loses gas: 100 L of water in rigid pipe filled at 20 degC and 1.3 bar, 12 L vessel charged
 * to 1.0 bar, topped up to the same fill pressure. Source of the figures: computed with IAPWS-95 densities that do not change with
 * pressure and Boyle's law; so the model of Kell (1975), which ignores pressure as well, is the one to compare with.
 */
class PressureSwingTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final Reading FILL = new Reading(GaugePressure.bar(1.3), Temperature.celsius(20));
    private static final InstalledVessel HEALTHY = InstalledVessel.of("V1", Volume.litres(12), GaugePressure.bar(1.0));

    private static final double SOUND_LITRES = 10.444;

    private static OperatingCurve curve(LoopFluid fluid, double gasLitres) {
        // The sound vessel has 12 x 2.01325 / 2.31325 = 10.4437 L of gas, printed as 10.444.
        InstalledVessel vessel =
                gasLitres == SOUND_LITRES ? HEALTHY : HEALTHY.withGas(Volume.litres(gasLitres), FILL.pressure(), AIR);
        Loop loop = Loop.withContents(Volume.litres(100)).rigid().filledWith(fluid);
        return LoopInUse.of(loop, VesselBank.of(vessel), FILL).curve();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ',',
            value = {
                "10.444, 40, 0.604, 1.44",
                "10.444, 50, 1.03, 1.55",
                "10.444, 60, 1.527, 1.7",
                "10.444, 80, 2.718, 2.11",
                " 5.222, 30, 0.257, 1.42",
                " 5.222, 40, 0.604, 1.6",
                " 5.222, 50, 1.03, 1.87",
                " 5.222, 60, 1.527, 2.26",
                " 5.222, 70, 2.091, 2.84",
                " 2.089, 30, 0.257, 1.62",
                " 2.089, 40, 0.604, 2.24",
                " 2.089, 50, 1.03, 3.55",
                " 2.089, 60, 1.527, 7.59",
                " 2.089, 70, 2.091, ''",
                " 0.522, 30, 0.257, 3.54",
                " 0.522, 40, 0.604, ''",
                " 0.522, 60, 1.527, ''",
                " 0.522, 80, 2.718, ''",
                "   0.1, 30, 0.257, ''",
                "   0.1, 40, 0.604, ''",
                "   0.1, 50, 1.03, ''",
                "   0.1, 60, 1.527, ''",
                "   0.1, 70, 2.091, ''",
                "   0.1, 80, 2.718, ''",
            })
    void printedStates(double gasLitres, double celsius, double expansion, String hotBar) {
        OperatingCurve curve = curve(Water.KELL_1975, gasLitres);
        OperatingPoint point = curve.at(Temperature.celsius(celsius));
        if (hotBar.isEmpty()) {
            assertThat(point.state()).isEqualTo(LoopState.LIQUID_FULL);
            assertThat(point.pressure()).isNull();
            return;
        }
        // Half the last digit of the pressure, and what half the last digit of gas and expansion is worth: p / V_gas x
        // 0.001 L.
        // The two formulations of density differ by up to 12 ppm, 0.0012 L of 100 L.
        double gas = gasLitres - expansion;
        double bar = Double.parseDouble(hotBar);
        double tolerance = 0.005 + (bar + 1.013) / gas * (0.001 + 0.0012);
        assertThat(curve.pressure(point.temperature()).in(Units.BAR)).isCloseTo(bar, within(tolerance));
        assertThat(point.state()).isEqualTo(LoopState.CUSHIONED);
        assertThat(point.water().in(Units.LITRE)).isCloseTo(12 - gas, within(0.0025));
    }

    @Test
    void waterThatGivesWayToPressureSoftensTheSteepStates() {
        // 80 % lost, 60 degC: from 2.31 to 8.2 bar 100 L give way by 100 x 4.45e-5 x 5.9 = 0.026 L, a twentieth of the
        // gas left.
        double stiff =
                curve(Water.KELL_1975, 2.089).pressure(Temperature.celsius(60)).in(Units.BAR);
        double real =
                curve(Water.IAPWS_IF97, 2.089).pressure(Temperature.celsius(60)).in(Units.BAR);
        assertThat(stiff - real).isBetween(0.3, 0.5);
        // Sound, 80 degC: 0.8 bar give way by 0.0037 L of the 7.7 L of gas, a thousandth of the pressure.
        double soundStiff = curve(Water.KELL_1975, SOUND_LITRES)
                .pressure(Temperature.celsius(80))
                .in(Units.BAR);
        double soundReal = curve(Water.IAPWS_IF97, SOUND_LITRES)
                .pressure(Temperature.celsius(80))
                .in(Units.BAR);
        assertThat(soundStiff - soundReal).isBetween(0.0, 0.004);
    }

    @Test
    void gasUsedUpIsOverThreeBarWithRealWater() {
        OperatingPoint point = curve(Water.IAPWS_IF97, 0.1).at(Temperature.celsius(30));
        assertThat(point.state()).isEqualTo(LoopState.LIQUID_FULL);
        assertThat(point.pressure()).isGreaterThan(GaugePressure.bar(3));
    }

    @Test
    void gasIsFoundAgainFromTwoReadings() {
        OperatingCurve lost = curve(Water.IAPWS_IF97, 5.222);
        Temperature hot = Temperature.celsius(60);
        OperatingCurve sound = curve(Water.IAPWS_IF97, SOUND_LITRES);
        Volume gas = GasCushion.explaining(sound, new Reading(lost.pressure(hot), hot));
        // The 5.2 L that took the place of the gas are compressed by 0.00022 L too, over 1 - 2.31/3.27 of the gas.
        assertThat(gas.in(Units.LITRE)).isCloseTo(5.222, within(0.001));
    }
}
