package org.ullage.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class GasLawTest {

    /** Relative rounding that a handful of double operations can add up to. */
    private static final double ROUNDING = 1e-12;

    @Example
    void acceptanceFactorOfAPublishedExample() {
        // R. W. Griffith, Thermal Expansion Tanks part 2 (2015): acceptance 2 gal, charge = line = 80 psig, at most 135
        // psig: 5.44 gal
        AbsolutePressure line = psia(94.7);
        Volume vessel = GasLaw.nominalVolume(Volume.gallons(2), line, line, psia(149.7));
        assertThat(vessel.in(Units.US_GALLON)).isCloseTo(5.44, within(0.005));
    }

    @Example
    void chargeBelowTheColdPressureEnlargesTheVesselByTheirRatio() {
        Volume water = Volume.litres(10);
        Volume equal = GasLaw.nominalVolume(water, bar(2), bar(2), bar(4));
        Volume below = GasLaw.nominalVolume(water, bar(1.6), bar(2), bar(4));
        assertThat(below.dividedBy(equal)).isCloseTo(2 / 1.6, within(ROUNDING));
    }

    @Example
    void vesselFullOfGasHoldsNoWater() {
        assertThat(GasLaw.waterInVessel(Volume.litres(50), bar(2), bar(1.5))).isEqualTo(Volume.litres(0));
        assertThat(GasLaw.waterInVessel(Volume.litres(50), bar(2), bar(2))).isEqualTo(Volume.litres(0));
        assertThat(GasLaw.waterInVessel(Volume.litres(50), bar(2), bar(4))).isEqualTo(Volume.litres(25));
    }

    @Property
    void vesselShrinksAsTheFinalPressureRises(
            @ForAll @DoubleRange(min = 0.1, max = 1) double chargeShare,
            @ForAll @DoubleRange(min = 1, max = 10) double cold,
            @ForAll @DoubleRange(min = 0.05, max = 10) double swing,
            @ForAll @DoubleRange(min = 0.05, max = 10) double more) {
        Volume water = Volume.litres(10);
        AbsolutePressure charge = bar(cold * chargeShare);
        Volume tight = GasLaw.nominalVolume(water, charge, bar(cold), bar(cold + swing));
        Volume ample = GasLaw.nominalVolume(water, charge, bar(cold), bar(cold + swing + more));
        assertThat(ample).isLessThan(tight);
    }

    @Property
    void vesselScalesWithTheWater(
            @ForAll @DoubleRange(min = 0.01, max = 10_000) double litres,
            @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
        Volume one = GasLaw.nominalVolume(Volume.litres(litres), bar(1.5), bar(2), bar(3.5));
        Volume many = GasLaw.nominalVolume(Volume.litres(litres).times(factor), bar(1.5), bar(2), bar(3.5));
        assertThat(many.dividedBy(one)).isCloseTo(factor, within(factor * ROUNDING));
    }

    @Property
    void checkingTheSizedVesselReturnsTheFinalPressure(
            @ForAll @DoubleRange(min = 0.1, max = 1) double chargeShare,
            @ForAll @DoubleRange(min = 1, max = 10) double cold,
            @ForAll @DoubleRange(min = 0.05, max = 10) double swing,
            @ForAll @DoubleRange(min = 0.01, max = 10_000) double litres) {
        AbsolutePressure charge = bar(cold * chargeShare);
        Volume water = Volume.litres(litres);
        Volume vessel = GasLaw.nominalVolume(water, charge, bar(cold), bar(cold + swing));
        AbsolutePressure reached = GasLaw.finalPressure(vessel, water, charge, bar(cold));
        // the ratio of gas volumes is formed from differences, which lose digits when the swing is small
        double lost = (cold + swing) / swing;
        assertThat(reached.si()).isCloseTo((cold + swing) * 1e5, within((cold + swing) * 1e5 * ROUNDING * lost));
    }

    @Property
    void waterThatEntersIsTheDifferenceOfTheWaterInTheVessel(
            @ForAll @DoubleRange(min = 1, max = 5) double charge,
            @ForAll @DoubleRange(min = 0.05, max = 5) double swing) {
        AbsolutePressure cold = bar(charge + 0.3);
        AbsolutePressure last = bar(charge + 0.3 + swing);
        Volume vessel = GasLaw.nominalVolume(Volume.litres(10), bar(charge), cold, last);
        double entered = GasLaw.waterInVessel(vessel, bar(charge), last).si()
                - GasLaw.waterInVessel(vessel, bar(charge), cold).si();
        assertThat(entered).isCloseTo(0.010, within(0.010 * 1e-9));
    }

    @Example
    void chargeAboveTheColdPressureIsRefusedWithBothValuesAndTheLikelyCause() {
        assertThatThrownBy(() -> GasLaw.nominalVolume(Volume.litres(1), bar(2.5), bar(2), bar(3)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("gas charge 2.5 bar abs")
                .hasMessageContaining("cold pressure 2 bar abs")
                .hasMessageContaining("gauge and absolute");
    }

    @Example
    void coldPressureNotBelowTheFinalOneIsRefusedWithBothValuesAndTheLikelyCause() {
        assertThatThrownBy(() -> GasLaw.nominalVolume(Volume.litres(1), bar(2), bar(3), bar(3)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("final pressure 3 bar abs")
                .hasMessageContaining("cold pressure 3 bar abs")
                .hasMessageContaining("gauge and absolute");
    }

    @Example
    void samePressureWrittenAsGaugeAndAsAbsoluteIsTheSame() {
        // 24.7 psi abs less 14.7 psi is not 10 psi to the last bit
        AbsolutePressure charge = AbsolutePressure.ofSi(200_000.000_01);
        assertThat(GasLaw.nominalVolume(Volume.litres(1), charge, bar(2), bar(3))
                        .in(Units.LITRE))
                .isCloseTo(3, within(1e-6));
        assertThat(GasLaw.isAbove(200_001, 200_000)).isTrue();
    }

    @Example
    void waterThatFitsAtNoPressureIsRefused() {
        assertThatThrownBy(() -> GasLaw.finalPressure(Volume.litres(10), Volume.litres(10), bar(2), bar(2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water to take in 10 L")
                .hasMessageContaining("larger");
    }

    @Example
    void negativeVolumesAreRefused() {
        assertThatThrownBy(() -> GasLaw.nominalVolume(Volume.litres(-1), bar(2), bar(2), bar(3)))
                .hasMessageContaining("water to take in -1 L");
        assertThatThrownBy(() -> GasLaw.waterInVessel(Volume.litres(-1), bar(2), bar(2)))
                .hasMessageContaining("nominal volume -1 L");
    }

    @Example
    void anExistingVesselIsCheckedLikeANewOne() {
        assertThatThrownBy(() -> GasLaw.finalPressure(Volume.litres(10), Volume.litres(1), bar(2.5), bar(2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("gas charge 2.5 bar abs");
        assertThatThrownBy(() -> GasLaw.finalPressure(Volume.litres(10), Volume.litres(-1), bar(2), bar(2)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water to take in -1 L");
        assertThatThrownBy(() -> GasLaw.pressureHolding(Volume.litres(10), bar(2), Volume.litres(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water to hold in the vessel -1 L");
    }

    @Example
    void chargeOfAnEmptyVesselFollowsItsTemperature() {
        // 2 bar abs at 20 degC are 2 x 273.15 / 293.15 = 1.8635 bar abs at 0 degC
        AbsolutePressure cold = GasLaw.chargeAt(bar(2), Temperature.celsius(20), Temperature.celsius(0));
        assertThat(cold.si()).isCloseTo(2e5 * 273.15 / 293.15, within(1e-6));
    }

    @Example
    void vesselWithoutVolumeIsRefused() {
        assertThatThrownBy(() -> GasLaw.requireNominal(Volume.litres(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("nominal volume 0 L")
                .hasMessageContaining("data plate");
        GasLaw.requireNominal(Volume.litres(0.001));
    }

    @Example
    void noWaterNeedsNoVessel() {
        assertThat(GasLaw.nominalVolume(Volume.litres(0), bar(2), bar(2), bar(3)))
                .isEqualTo(Volume.litres(0));
    }

    @Example
    void warmerGasWhenHotNeedsALargerVessel() {
        // charged and cold at 20 degC, hot at 40: 1 / (2/2.5 - 2 x 313.15/293.15 / 4)
        GasTemperatures warm = new GasTemperatures(
                Temperature.celsius(20), Temperature.celsius(20), Temperature.celsius(40), Source.given());
        assertThat(GasLaw.volumePerWater(2e5, 2.5e5, 4e5, warm))
                .isCloseTo(1 / (0.8 - 0.5 * 313.15 / 293.15), within(1e-12));
        // both warmer than when charged: 1 / (2 x 313.15/293.15 / 2.5 - 2 x 333.15/293.15 / 4)
        GasTemperatures both = new GasTemperatures(
                Temperature.celsius(20), Temperature.celsius(40), Temperature.celsius(60), Source.given());
        assertThat(GasLaw.volumePerWater(2e5, 2.5e5, 4e5, both))
                .isCloseTo(1 / (0.8 * 313.15 / 293.15 - 0.5 * 333.15 / 293.15), within(1e-12));
    }

    private static AbsolutePressure bar(double number) {
        return AbsolutePressure.bar(number);
    }

    private static AbsolutePressure psia(double number) {
        return AbsolutePressure.psi(number);
    }
}
