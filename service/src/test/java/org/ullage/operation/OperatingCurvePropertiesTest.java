package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.loop.PipeMaterial;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/** What holds for every loop in use, whatever its numbers. */
class OperatingCurvePropertiesTest {

    private static final InstalledVessel THIRD =
            vessel("C", 50, 0.8).standing(Length.metres(3)).withAcceptanceLimit(Volume.litres(15));

    private static OperatingCurve curve(double contents, double fill, InstalledVessel... vessels) {
        return loop(contents, PipeMaterial.STEEL, InUse.SPRINGY, bank(vessels), reading(fill, 20))
                .curve();
    }

    @Property
    void massIsKept(
            @ForAll @DoubleRange(min = 50, max = 2000) double contents,
            @ForAll @DoubleRange(min = 1, max = 2) double fill,
            @ForAll @DoubleRange(min = 10, max = 95) double celsius) {
        OperatingCurve curve = curve(contents, fill, vessel("A", 80, 0.9), vessel("B", 40, 1), THIRD);
        OperatingPoint point = curve.at(Temperature.celsius(celsius));
        GaugePressure pressure = point.pressure();
        Assume.that(pressure != null);
        double pascals = pressure.absolute(InUse.ONE_BAR).si();
        double atFill = (fill + 1) * 1e5;
        double waterAtFill = curve.inUse().bank().water(GaugePressure.bar(fill)).si();
        double before = (contents / 1000 + waterAtFill) / volume(20, atFill);
        double room = contents / 1000 * (1 + 3 * 11.7e-6 * (celsius - 20));
        double waterNow = curve.inUse().bank().water(pressure).si();
        double stayed = Math.min(waterAtFill, waterNow);
        double after = room / volume(celsius, pascals)
                + stayed / volume(20, pascals)
                + (waterNow - stayed) / volume(celsius, pascals);
        assertThat(after).isCloseTo(before, within(before * 1e-9));
    }

    private static double volume(double celsius, double pascals) {
        return InUse.SPRINGY.specificVolumeSi(celsius + 273.15, pascals);
    }

    @Property
    void pressureRisesWithTemperature(
            @ForAll @DoubleRange(min = 50, max = 3000) double contents,
            @ForAll @DoubleRange(min = 20, max = 90) double celsius,
            @ForAll @DoubleRange(min = 0.5, max = 5) double warming) {
        OperatingNumbers numbers = curve(contents, 1.3, vessel("A", 80, 1), vessel("B", 40, 1.2), THIRD)
                .numbers();
        double before = numbers.pressure(celsius + 273.15);
        double after = numbers.pressure(celsius + 273.15 + warming);
        assertThat(after).isGreaterThanOrEqualTo(before);
        if (OperatingNumbers.isPressure(before)) {
            assertThat(after).isGreaterThan(before);
        }
    }

    @Property
    void twoAlikeAreOneOfDoubleSize(
            @ForAll @DoubleRange(min = 10, max = 500) double litres,
            @ForAll @DoubleRange(min = 0.5, max = 1.3) double charge,
            @ForAll @DoubleRange(min = 20, max = 90) double celsius) {
        double two = curve(300, 1.3, vessel("A", litres, charge), vessel("B", litres, charge))
                .numbers()
                .pressure(celsius + 273.15);
        double one = curve(300, 1.3, vessel("C", 2 * litres, charge)).numbers().pressure(celsius + 273.15);
        assertThat(two).isEqualTo(one);
    }

    @Property
    void orderDoesNotMatter(
            @ForAll @DoubleRange(min = 0.5, max = 1.5) double first,
            @ForAll @DoubleRange(min = 0.5, max = 1.5) double second,
            @ForAll @DoubleRange(min = 20, max = 90) double celsius) {
        InstalledVessel a = vessel("A", 33, first);
        InstalledVessel b = vessel("B", 57, second);
        double kelvins = celsius + 273.15;
        assertThat(curve(400, 1.4, a, b, THIRD).numbers().pressure(kelvins))
                .isEqualTo(curve(400, 1.4, THIRD, b, a).numbers().pressure(kelvins));
    }

    @Property
    void shuttingAVesselOffNeverHelps(
            @ForAll @DoubleRange(min = 0.5, max = 2) double charge,
            @ForAll @DoubleRange(min = 20, max = 50) double when,
            @ForAll @DoubleRange(min = 0.1, max = 40) double warming) {
        OperatingCurve all = curve(200, 1.3, vessel("A", 40, 1), vessel("B", 40, charge));
        OperatingCurve rest = all.isolating("B", Temperature.celsius(when));
        double kelvins = when + warming + 273.15;
        double alone = rest.numbers().pressure(kelvins);
        double together = all.numbers().pressure(kelvins);
        assertThat(alone).isGreaterThanOrEqualTo(together * (1 - 1e-9));
        if (together > (charge + 1.01) * 1e5) {
            assertThat(alone).isGreaterThan(together);
        }
    }

    @Property
    void aLimitIsReachedAtItsTemperature(
            @ForAll @DoubleRange(min = 100, max = 1000) double contents,
            @ForAll @DoubleRange(min = 1.4, max = 3) double limit) {
        OperatingCurve curve = curve(contents, 1.3, vessel("A", 40, 1), vessel("B", 40, 1.2));
        Temperature warmest = new CurveLimits(curve).warmestBelow(GaugePressure.bar(limit));
        Assume.that(warmest != null);
        assertThat(curve.pressureSi(warmest.si())).isCloseTo((limit + 1) * 1e5, within(1.0));
    }

    @Property
    void gasIsFoundAgain(
            @ForAll @DoubleRange(min = 5, max = 100) double litres,
            @ForAll @DoubleRange(min = 30, max = 90) double celsius) {
        OperatingCurve curve = curve(100, 1.3, vessel("A", litres, 1));
        Temperature hot = Temperature.celsius(celsius);
        GaugePressure pressure = curve.at(hot).pressure();
        Assume.that(pressure != null);
        double gas = GasCushion.explaining(curve, new Reading(pressure, hot)).si();
        assertThat(gas).isCloseTo(GasCushion.gasOf(litres / 1000, 2, 2.3), within(gas * 1e-6));
    }
}
