package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** The equations of the release over their whole range, against the published sum and against one another. */
class Iapws97PropertyTest {
    /** 1e-12 allows for the rounding of powers up to the 41st; no term may be missing, as each one matters somewhere. */
    @Property
    void groupedKernelIsThePublishedSum(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) @Scale(9) double share) {
        double lowest = Iapws97.saturationPressure(kelvins);
        assertIsPublishedSum(kelvins, lowest + share * (Iapws97.HIGHEST_PRESSURE.value() - lowest));
    }

    @Example
    void groupedKernelIsThePublishedSumAtTheEdges() {
        for (double kelvins : new double[] {273.15, 277.15, 373.15, 500, 623.15}) {
            assertIsPublishedSum(kelvins, Iapws97.saturationPressure(kelvins));
            assertIsPublishedSum(kelvins, Iapws97.HIGHEST_PRESSURE.value());
        }
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

    /** Region 1 without its lower pressure limit has no vapour to fall into: the numbers stay finite. */
    @Property
    void everyAcceptedStateGivesAFiniteNumber(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 1e-9, max = 100e6) @Scale(9) double pascals) {
        assertThat(Iapws97.specificVolume(kelvins, pascals)).isFinite().isPositive();
        assertThat(Iapws97.specificEnthalpy(kelvins, pascals)).isFinite();
        assertThat(Iapws97.specificHeatCapacity(kelvins, pascals)).isFinite();
    }

    private static void assertIsPublishedSum(double kelvins, double pascals) {
        double expected = Iapws97PublishedSum.specificVolume(kelvins, pascals);
        assertThat(Iapws97.specificVolume(kelvins, pascals)).isCloseTo(expected, within(1e-12 * expected));
    }
}
