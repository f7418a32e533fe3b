package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.fluids.GlycolCases.density;
import static org.ullage.fluids.GlycolCases.expansion;
import static org.ullage.fluids.GlycolCases.vol;
import static org.ullage.quantity.Temperature.celsius;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/** Properties that need no published value: smooth, ordered, finite. */
class GlycolPropertyTest {

    @Property(tries = 3000)
    void anyInputGivesAFiniteNumberOrARefusal(
            @ForAll Glycol glycol,
            @ForAll GlycolModel model,
            @ForAll double fraction,
            @ForAll double kelvins,
            @ForAll double pascals) {
        try {
            double part = Math.abs(fraction % 1);
            GlycolSolution fluid = glycol.by(model, MassFraction.ofSi(part));
            assertThat(fluid.vapourPressureSi(kelvins)).isPositive().isFinite();
            assertThat(fluid.specificVolumeSi(kelvins, pascals)).isPositive().isFinite();
        } catch (OutOfRangeException refused) {
            assertThat(refused.getMessage()).contains(" is not allowed: it must be ");
        }
    }

    @Property
    void usualInputGivesASensibleDensityOrARefusal(
            @ForAll Glycol glycol,
            @ForAll GlycolModel model,
            @ForAll @DoubleRange(min = 0, max = 100) double percent,
            @ForAll @DoubleRange(min = -60, max = 140) double celsius) {
        try {
            assertThat(density(glycol.by(model, vol(percent)), celsius)).isBetween(900.0, 1150.0);
        } catch (OutOfRangeException refused) {
            assertThat(refused.remedy()).isNotBlank();
        }
    }

    @Property
    void expansionGrowsWithTemperature(
            @ForAll Glycol glycol,
            @ForAll GlycolModel model,
            @ForAll @DoubleRange(min = 10, max = 57.8) double percent,
            @ForAll @DoubleRange(min = 5, max = 98) double celsius) {
        if (model == GlycolModel.CONDE && glycol == Glycol.ETHYLENE && percent < 15) {
            return; // its density maximum lies above 5 degC there
        }
        GlycolSolution fluid = glycol.by(model, vol(percent));
        assertThat(density(fluid, celsius + 1)).isLessThan(density(fluid, celsius));
    }

    @Property
    void strongerMixturesAreDenserAndExpandMore(
            @ForAll Glycol glycol, @ForAll GlycolModel model, @ForAll @DoubleRange(min = 15, max = 47) double percent) {
        GlycolSolution weaker = glycol.by(model, vol(percent));
        GlycolSolution stronger = glycol.by(model, vol(percent + 5));
        assertThat(density(stronger, 20)).isGreaterThan(density(weaker, 20));
        assertThat(expansion(stronger, 5, 80)).isGreaterThan(expansion(weaker, 5, 80));
    }

    /**
     * The tables' own second differences over 5 K lie between -0.14 and -0.11 kg/m3, rounding included. Between rows and columns,
     * and over the coarse rows above 100 degC, the curve may bend little more or less than that.
     */
    @Property
    void noKinkIsBiggerThanTheTablesOwn(
            @ForAll Glycol glycol,
            @ForAll @DoubleRange(min = 10, max = 60) double percent,
            @ForAll @DoubleRange(min = 6, max = 119) double celsius) {
        GlycolSolution fluid = glycol.by(GlycolModel.ASHRAE, vol(percent));
        double second = density(fluid, celsius - 5) - 2 * density(fluid, celsius) + density(fluid, celsius + 5);
        assertThat(second).isBetween(-0.17, -0.08);
    }

    @Property
    void nothingJumpsAcrossConcentration(
            @ForAll Glycol glycol,
            @ForAll GlycolModel model,
            @ForAll @DoubleRange(min = 10, max = 57.7) double percent,
            @ForAll @DoubleRange(min = 1, max = 99) double celsius) {
        double here = density(glycol.by(model, vol(percent)), celsius);
        double beside = density(glycol.by(model, vol(percent + 0.001)), celsius);
        assertThat(beside).isCloseTo(here, within(0.005));
    }

    @Property
    void idealMixingIsALowerBoundOfTheDefault(
            @ForAll Glycol glycol,
            @ForAll @DoubleRange(min = 27, max = 57.8) double percent,
            @ForAll @DoubleRange(min = 40, max = 99) double hot) {
        double bound = expansion(glycol.by(GlycolModel.IDEAL_MIXING, vol(percent)), 10, hot);
        assertThat(expansion(glycol.of(vol(percent)), 10, hot)).isGreaterThan(bound);
    }

    @Property
    void vapourPressureOfTheFluidIsAboveTheEstimate(
            @ForAll Glycol glycol,
            @ForAll @DoubleRange(min = 10, max = 57.8) double percent,
            @ForAll @DoubleRange(min = 0, max = 100) double celsius) {
        GlycolSolution fluid = glycol.by(GlycolModel.IDEAL_MIXING, vol(percent));
        assertThat(fluid.raoult().vapourPressure(celsius(celsius))).isLessThan(fluid.vapourPressure(celsius(celsius)));
    }

    @Property
    void estimatedBoilingPointIsWhereTheEstimatedPressureIsMet(
            @ForAll Glycol glycol,
            @ForAll @DoubleRange(min = 0, max = 60) double massPercent,
            @ForAll @DoubleRange(min = 1, max = 179) double celsius) {
        RaoultEstimate estimate = new RaoultEstimate(glycol, MassFraction.percent(massPercent));
        double back =
                estimate.boilingPoint(estimate.vapourPressure(celsius(celsius))).in(Units.CELSIUS);
        assertThat(back).isCloseTo(celsius, within(1e-6));
    }

    @Property
    void freezingPointFallsWithConcentration(
            @ForAll Glycol glycol,
            @ForAll FreezingModel model,
            @ForAll @DoubleRange(min = 0, max = 59) double massPercent) {
        FreezingCurve curve = glycol.freezing(model);
        assertThat(curve.pointAt(MassFraction.percent(massPercent + 1)))
                .isLessThan(curve.pointAt(MassFraction.percent(massPercent)));
    }
}
