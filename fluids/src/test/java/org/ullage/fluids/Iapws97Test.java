package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.OutOfRangeException;

class Iapws97Test {

    static Stream<WaterReferenceTable.Row> verificationValues() {
        return WaterReferenceTable.rows("water-iapws-r7-97-verification.tsv");
    }

    @ParameterizedTest
    @MethodSource("verificationValues")
    void meetsEveryPrintedDigitOfTheRelease(WaterReferenceTable.Row row) {
        PrintedWaterValue.assertRoundsTo(row.printed("value"), computed(row));
    }

    private static double computed(WaterReferenceTable.Row row) {
        return switch (row.text("quantity")) {
            case "specific volume" -> ofState(Iapws97::specificVolume, row);
            case "specific enthalpy" -> ofState(Iapws97::specificEnthalpy, row) / 1e3;
            case "specific heat capacity" -> ofState(Iapws97::specificHeatCapacity, row) / 1e3;
            case "saturation pressure" -> Iapws97.saturationPressure(row.number("T_K")) / 1e6;
            case "saturation temperature" -> Iapws97.saturationTemperature(row.number("p_MPa") * 1e6);
            default -> throw new IllegalArgumentException(row.toString());
        };
    }

    private static double ofState(DoubleBinaryOperator kernel, WaterReferenceTable.Row row) {
        return kernel.applyAsDouble(row.number("T_K"), row.number("p_MPa") * 1e6);
    }

    @Test
    void refusesTemperatureOutsideRegion1() {
        assertThatThrownBy(() -> Iapws97.specificVolume(623.2, 20e6))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "water temperature 350.05 degC is not allowed: it must be 0 degC to 350 degC for this model;"
                                + " give a temperature inside the range");
    }

    @Test
    void refusesPressureAboveRegion1() {
        assertThatThrownBy(() -> Iapws97.specificEnthalpy(300, 100.5e6))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("water pressure 1005 bar abs is not allowed: it must be above 0 and at most 1000 bar abs;"
                        + " give the absolute pressure at the point whose temperature is meant");
    }

    @Test
    void refusesVacuum() {
        assertThatThrownBy(() -> Iapws97.specificHeatCapacity(300, 0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("water pressure 0.0 Pa abs is not allowed: it must be above 0 and at most");
    }

    @Test
    void refusesBoilingAboveTheCriticalPoint() {
        assertThatThrownBy(() -> Iapws97.saturationPressure(648.15))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("temperature of boiling water 375 degC is not allowed: it must be 0 degC to 373.946 degC,"
                        + " the critical point; give a temperature inside that range");
    }

    @Test
    void refusesBoilingPressureOutsideTheLine() {
        assertThatThrownBy(() -> Iapws97.saturationTemperature(600))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("pressure of boiling water 0.6 kPa abs is not allowed: it must be 0.611213 kPa abs to"
                        + " 22064 kPa abs, the critical point; give an absolute pressure inside that range");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 1e300})
    void refusesWhatIsNoTemperature(double kelvins) {
        assertRefused(() -> Iapws97.specificVolume(kelvins, 3e5));
        assertRefused(() -> Iapws97.specificEnthalpy(kelvins, 3e5));
        assertRefused(() -> Iapws97.specificHeatCapacity(kelvins, 3e5));
        assertRefused(() -> Iapws97.saturationPressure(kelvins));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 0, 1e300})
    void refusesWhatIsNoPressure(double pascals) {
        assertRefused(() -> Iapws97.specificVolume(300, pascals));
        assertRefused(() -> Iapws97.specificEnthalpy(300, pascals));
        assertRefused(() -> Iapws97.specificHeatCapacity(300, pascals));
        assertRefused(() -> Iapws97.saturationTemperature(pascals));
    }

    private static void assertRefused(Runnable call) {
        assertThatThrownBy(call::run).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {273.15, 647.096})
    void saturationLineReachesItsEnds(double kelvins) {
        double back = Iapws97.saturationTemperature(Iapws97.saturationPressure(kelvins));
        assertThat(back).isCloseTo(kelvins, within(1e-8));
    }
}
