package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
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

    /** 1e-12 allows for the rounding of powers up to the 41st; no term may be missing, as each one matters somewhere. */
    @Property
    void groupedKernelIsThePublishedSum(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(9) double share) {
        double lowest = Iapws97.saturationPressure(kelvins);
        assertIsPublishedSum(kelvins, lowest + share * (Iapws97.HIGHEST_PASCALS - lowest));
    }

    @ParameterizedTest
    @ValueSource(doubles = {273.15, 277.15, 373.15, 500, 623.15})
    void groupedKernelIsThePublishedSumAtTheEdges(double kelvins) {
        assertIsPublishedSum(kelvins, Iapws97.saturationPressure(kelvins));
        assertIsPublishedSum(kelvins, Iapws97.HIGHEST_PASCALS);
    }

    private static void assertIsPublishedSum(double kelvins, double pascals) {
        double expected = Iapws97PublishedSum.specificVolume(kelvins, pascals);
        assertThat(Iapws97.specificVolume(kelvins, pascals)).isCloseTo(expected, within(1e-12 * expected));
    }

    /** The two equations of region 4 are one implicit equation solved both ways, so only rounding is lost. */
    @Property
    void saturationTemperatureUndoesSaturationPressure(
            @ForAll @DoubleRange(min = 273.15, max = 647.096) @Scale(9) double kelvins) {
        double back = Iapws97.saturationTemperature(Iapws97.saturationPressure(kelvins));
        assertThat(back).isCloseTo(kelvins, within(1e-8));
    }

    /** cp is the slope of h with temperature: a check that uses no table. Central difference, error of order step squared. */
    @Property
    void heatCapacityIsTheSlopeOfEnthalpy(
            @ForAll @DoubleRange(min = 274, max = 600) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 13e6, max = 100e6) @Scale(9) double pascals) {
        double step = 0.05;
        double slope =
                (Iapws97.specificEnthalpy(kelvins + step, pascals) - Iapws97.specificEnthalpy(kelvins - step, pascals))
                        / (2 * step);
        assertThat(Iapws97.specificHeatCapacity(kelvins, pascals)).isCloseTo(slope, within(1e-5 * slope));
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

    /** Region 1 without its lower pressure limit has no vapour to fall into: the numbers stay finite. */
    @Property
    void everyAcceptedStateGivesAFiniteNumber(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 1e-9, max = 100e6) @Scale(9) double pascals) {
        assertThat(Iapws97.specificVolume(kelvins, pascals)).isFinite().isPositive();
        assertThat(Iapws97.specificEnthalpy(kelvins, pascals)).isFinite();
        assertThat(Iapws97.specificHeatCapacity(kelvins, pascals)).isFinite();
    }

    @ParameterizedTest
    @ValueSource(doubles = {273.15, 647.096})
    void saturationLineReachesItsEnds(double kelvins) {
        double back = Iapws97.saturationTemperature(Iapws97.saturationPressure(kelvins));
        assertThat(back).isCloseTo(kelvins, within(1e-8));
    }
}
