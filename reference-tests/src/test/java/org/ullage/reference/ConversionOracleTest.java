package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Area;
import org.ullage.quantity.Density;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.LinearExpansion;
import org.ullage.quantity.Mass;
import org.ullage.quantity.MassFraction;
import org.ullage.quantity.Moment;
import org.ullage.quantity.Power;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.SecondMoment;
import org.ullage.quantity.SectionModulus;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Stress;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Unit;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import si.uom.SI;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;

/**
 * Every conversion factor, held against the units library Indriya 2.2.4 with systems-common 2.2, and against the exact
 * definition written out here. Definitions from memory: NIST SP 811 (2008), Appendix B, and the SI Brochure (9th ed., 2019).
 */
class ConversionOracleTest {

    /** Two roundings here and two there, each at most half a unit in the last place: 4.4e-16 of the value. */
    private static final double RELATIVE = 2 * Math.ulp(1.0);

    private static final MathContext DIGITS_34 = MathContext.DECIMAL128;

    /** One unit of ours, its SI value here, and the same unit in Indriya where it has one or can be composed from its own. */
    private record Row(Unit<?> unit, double si, javax.measure.Unit<?> oracle, javax.measure.Unit<?> oracleSi) {

        @Override
        public String toString() {
            return unit + " = " + oracle;
        }
    }

    static Stream<Row> unitsThatIndriyaHas() {
        javax.measure.Unit<?> pascal = SI.PASCAL;
        javax.measure.Unit<?> cubicMetre = SI.CUBIC_METRE;
        javax.measure.Unit<?> cubicFoot = USCustomary.FOOT.pow(3);
        javax.measure.Unit<?> perVolume = SI.KILOGRAM.divide(SI.CUBIC_METRE);
        javax.measure.Unit<?> perMass = SI.CUBIC_METRE.divide(SI.KILOGRAM);
        javax.measure.Unit<?> metreOfWater =
                perVolume.multiply(1000).multiply(Imperial.STANDARD_GRAVITY).multiply(SI.METRE);
        javax.measure.Unit<?> newtonMetre = SI.NEWTON.multiply(SI.METRE);
        javax.measure.Unit<?> poundPerSquareInch = Imperial.POUND_FORCE.divide(USCustomary.INCH.pow(2));
        return Stream.of(
                row(Units.PASCAL, PressureDifference.of(1, Units.PASCAL).si(), pascal, pascal),
                row(Units.KILOPASCAL, PressureDifference.kilopascals(1).si(), MetricPrefix.KILO(SI.PASCAL), pascal),
                row(
                        Units.MEGAPASCAL,
                        PressureDifference.of(1, Units.MEGAPASCAL).si(),
                        MetricPrefix.MEGA(SI.PASCAL),
                        pascal),
                row(
                        Units.MILLIBAR,
                        PressureDifference.of(1, Units.MILLIBAR).si(),
                        MetricPrefix.HECTO(SI.PASCAL),
                        pascal),
                row(Units.PSI, PressureDifference.psi(1).si(), poundPerSquareInch, pascal),
                row(
                        Units.METRE_OF_WATER,
                        PressureDifference.of(1, Units.METRE_OF_WATER).si(),
                        metreOfWater,
                        pascal),
                row(
                        Units.FOOT_OF_WATER,
                        PressureDifference.of(1, Units.FOOT_OF_WATER).si(),
                        metreOfWater.divide(SI.METRE).multiply(USCustomary.FOOT),
                        pascal),
                row(Units.KELVIN, Temperature.kelvins(1).si(), SI.KELVIN, SI.KELVIN),
                row(Units.CELSIUS, Temperature.celsius(1).si(), SI.CELSIUS, SI.KELVIN),
                row(Units.FAHRENHEIT, Temperature.fahrenheit(1).si(), USCustomary.FAHRENHEIT, SI.KELVIN),
                row(Units.RANKINE, Temperature.of(1, Units.RANKINE).si(), USCustomary.RANKINE, SI.KELVIN),
                row(Units.CUBIC_METRE, Volume.cubicMetres(1).si(), cubicMetre, cubicMetre),
                row(Units.LITRE, Volume.litres(1).si(), USCustomary.LITER, cubicMetre),
                row(Units.US_GALLON, Volume.gallons(1).si(), USCustomary.GALLON_LIQUID, cubicMetre),
                row(Units.CUBIC_FOOT, Volume.of(1, Units.CUBIC_FOOT).si(), USCustomary.CUBIC_FOOT, cubicMetre),
                row(Units.METRE, Length.metres(1).si(), SI.METRE, SI.METRE),
                row(Units.MILLIMETRE, Length.millimetres(1).si(), MetricPrefix.MILLI(SI.METRE), SI.METRE),
                row(Units.FOOT, Length.feet(1).si(), USCustomary.FOOT, SI.METRE),
                row(Units.INCH, Length.of(1, Units.INCH).si(), USCustomary.INCH, SI.METRE),
                row(Units.KILOGRAM, Mass.kilograms(1).si(), SI.KILOGRAM, SI.KILOGRAM),
                row(Units.GRAM, Mass.of(1, Units.GRAM).si(), SI.GRAM, SI.KILOGRAM),
                row(Units.POUND, Mass.pounds(1).si(), USCustomary.POUND, SI.KILOGRAM),
                row(
                        Units.KILOGRAM_PER_CUBIC_METRE,
                        Density.kilogramsPerCubicMetre(1).si(),
                        perVolume,
                        perVolume),
                row(
                        Units.POUND_PER_CUBIC_FOOT,
                        Density.of(1, Units.POUND_PER_CUBIC_FOOT).si(),
                        USCustomary.POUND.divide(cubicFoot),
                        perVolume),
                row(
                        Units.CUBIC_METRE_PER_KILOGRAM,
                        SpecificVolume.cubicMetresPerKilogram(1).si(),
                        perMass,
                        perMass),
                row(
                        Units.LITRE_PER_KILOGRAM,
                        SpecificVolume.of(1, Units.LITRE_PER_KILOGRAM).si(),
                        USCustomary.LITER.divide(SI.KILOGRAM),
                        perMass),
                row(
                        Units.CUBIC_FOOT_PER_POUND,
                        SpecificVolume.of(1, Units.CUBIC_FOOT_PER_POUND).si(),
                        cubicFoot.divide(USCustomary.POUND),
                        perMass),
                row(Units.WATT, Power.of(1, Units.WATT).si(), SI.WATT, SI.WATT),
                row(Units.KILOWATT, Power.kilowatts(1).si(), MetricPrefix.KILO(SI.WATT), SI.WATT),
                row(Units.NEWTON, Force.newtons(1).si(), SI.NEWTON, SI.NEWTON),
                row(Units.KILONEWTON, Force.of(1, Units.KILONEWTON).si(), MetricPrefix.KILO(SI.NEWTON), SI.NEWTON),
                row(Units.POUND_FORCE, Force.poundsForce(1).si(), Imperial.POUND_FORCE, SI.NEWTON),
                row(Units.SQUARE_METRE, Area.squareMetres(1).si(), SI.SQUARE_METRE, SI.SQUARE_METRE),
                row(Units.SQUARE_FOOT, Area.squareFeet(1).si(), USCustomary.FOOT.pow(2), SI.SQUARE_METRE),
                row(Units.NEWTON_METRE, Moment.newtonMetres(1).si(), newtonMetre, newtonMetre),
                row(
                        Units.POUND_FORCE_FOOT,
                        Moment.of(1, Units.POUND_FORCE_FOOT).si(),
                        Imperial.POUND_FORCE.multiply(USCustomary.FOOT),
                        newtonMetre),
                row(
                        Units.POUND_FORCE_INCH,
                        Moment.poundForceInches(1).si(),
                        Imperial.POUND_FORCE.multiply(USCustomary.INCH),
                        newtonMetre),
                row(Units.STRESS_PASCAL, Stress.of(1, Units.STRESS_PASCAL).si(), SI.PASCAL, SI.PASCAL),
                row(Units.STRESS_MEGAPASCAL, Stress.megapascals(1).si(), MetricPrefix.MEGA(SI.PASCAL), SI.PASCAL),
                row(Units.STRESS_PSI, Stress.psi(1).si(), poundPerSquareInch, SI.PASCAL),
                row(
                        Units.STRESS_KSI,
                        Stress.of(1, Units.STRESS_KSI).si(),
                        poundPerSquareInch.multiply(1000),
                        SI.PASCAL),
                row(Units.MASS_PERCENT, MassFraction.percent(1).si(), SI.PERCENT, AbstractUnit.ONE),
                row(
                        Units.MASS_FRACTION,
                        MassFraction.of(1, Units.MASS_FRACTION).si(),
                        AbstractUnit.ONE,
                        AbstractUnit.ONE),
                row(Units.VOLUME_PERCENT, VolumeFraction.percent(1).si(), SI.PERCENT, AbstractUnit.ONE),
                row(
                        Units.VOLUME_FRACTION,
                        VolumeFraction.of(1, Units.VOLUME_FRACTION).si(),
                        AbstractUnit.ONE,
                        AbstractUnit.ONE),
                row(Units.PER_KELVIN, LinearExpansion.perKelvin(1).si(), SI.KELVIN.inverse(), SI.KELVIN.inverse()),
                row(
                        Units.PER_FAHRENHEIT_DEGREE,
                        LinearExpansion.perFahrenheitDegree(1).si(),
                        USCustomary.RANKINE.inverse(),
                        SI.KELVIN.inverse()));
    }

    private static Row row(Unit<?> unit, double si, javax.measure.Unit<?> oracle, javax.measure.Unit<?> oracleSi) {
        return new Row(unit, si, oracle, oracleSi);
    }

    @ParameterizedTest
    @MethodSource("unitsThatIndriyaHas")
    void agreesWithIndriya(Row row) throws Exception {
        double expected = row.oracle().getConverterToAny(row.oracleSi()).convert(1.0);
        assertThat(row.si()).isCloseTo(expected, within(RELATIVE * expected));
    }

    /** The offset of a scale costs one more rounding here and one there, each at most half a unit in the last place below 1024 K. */
    @ParameterizedTest
    @ValueSource(doubles = {-40, 0, 4, 20, 60, 82.2, 100, 113.7, 212, 280, 350, 662})
    void temperatureScalesAgreeWithIndriya(double number) throws Exception {
        double room = Math.ulp(1000.0);
        assertThat(Temperature.celsius(number).si())
                .isCloseTo(SI.CELSIUS.getConverterTo(SI.KELVIN).convert(number), within(room));
        assertThat(Temperature.fahrenheit(number).si())
                .isCloseTo(USCustomary.FAHRENHEIT.getConverterTo(SI.KELVIN).convert(number), within(room));
        assertThat(Temperature.of(number + 460, Units.RANKINE).si())
                .isCloseTo(USCustomary.RANKINE.getConverterTo(SI.KELVIN).convert(number + 460), within(room));
    }

    /** A unit with its definition in words and as an exact fraction. */
    private record Definition(Unit<?> unit, double si, String words, BigDecimal numerator, BigDecimal denominator) {

        @Override
        public String toString() {
            return unit + ": " + words;
        }
    }

    static Stream<Definition> definitions() {
        BigDecimal one = BigDecimal.ONE;
        BigDecimal inch = new BigDecimal("0.0254");
        BigDecimal foot = new BigDecimal("0.3048");
        BigDecimal million = new BigDecimal("1e6");
        BigDecimal cubicFoot = foot.pow(3);
        BigDecimal pound = new BigDecimal("0.45359237");
        BigDecimal gravity = new BigDecimal("9.80665");
        BigDecimal metreOfWater = new BigDecimal("1000").multiply(gravity);
        // 2326 J/kg is by definition one Btu (International Table) per pound.
        BigDecimal btu = new BigDecimal("2326").multiply(pound);
        return Stream.of(
                new Definition(Units.BAR, PressureDifference.bar(1).si(), "100 kPa", new BigDecimal("1e5"), one),
                new Definition(
                        Units.PSI,
                        PressureDifference.psi(1).si(),
                        "weight of 0.45359237 kg under 9.80665 m/s2, on the square of 0.0254 m",
                        pound.multiply(gravity),
                        inch.pow(2)),
                new Definition(
                        Units.METRE_OF_WATER,
                        PressureDifference.of(1, Units.METRE_OF_WATER).si(),
                        "1000 kg/m3 x 9.80665 m/s2 x 1 m",
                        metreOfWater,
                        one),
                new Definition(
                        Units.FOOT_OF_WATER,
                        PressureDifference.of(1, Units.FOOT_OF_WATER).si(),
                        "1000 kg/m3 x 9.80665 m/s2 x 0.3048 m",
                        metreOfWater.multiply(foot),
                        one),
                new Definition(
                        Units.KELVIN_DIFFERENCE,
                        TemperatureDifference.kelvins(1).si(),
                        "1 K",
                        one,
                        one),
                new Definition(
                        Units.CELSIUS_DIFFERENCE,
                        TemperatureDifference.of(1, Units.CELSIUS_DIFFERENCE).si(),
                        "1 K",
                        one,
                        one),
                new Definition(
                        Units.FAHRENHEIT_DIFFERENCE,
                        TemperatureDifference.fahrenheitDegrees(1).si(),
                        "5/9 K",
                        new BigDecimal("5"),
                        new BigDecimal("9")),
                new Definition(
                        Units.RANKINE_DIFFERENCE,
                        TemperatureDifference.of(1, Units.RANKINE_DIFFERENCE).si(),
                        "5/9 K",
                        new BigDecimal("5"),
                        new BigDecimal("9")),
                new Definition(
                        Units.RANKINE,
                        Temperature.of(1, Units.RANKINE).si(),
                        "5/9 K",
                        new BigDecimal("5"),
                        new BigDecimal("9")),
                new Definition(
                        Units.US_GALLON,
                        Volume.gallons(1).si(),
                        "231 cubic inches",
                        new BigDecimal("231").multiply(inch.pow(3)),
                        one),
                new Definition(
                        Units.CUBIC_FOOT, Volume.of(1, Units.CUBIC_FOOT).si(), "cube of 0.3048 m", cubicFoot, one),
                new Definition(Units.FOOT, Length.feet(1).si(), "0.3048 m", foot, one),
                new Definition(Units.INCH, Length.of(1, Units.INCH).si(), "0.0254 m", inch, one),
                new Definition(Units.POUND, Mass.pounds(1).si(), "0.45359237 kg", pound, one),
                new Definition(
                        Units.POUND_PER_CUBIC_FOOT,
                        Density.of(1, Units.POUND_PER_CUBIC_FOOT).si(),
                        "0.45359237 kg in the cube of 0.3048 m",
                        pound,
                        cubicFoot),
                new Definition(
                        Units.CUBIC_FOOT_PER_POUND,
                        SpecificVolume.of(1, Units.CUBIC_FOOT_PER_POUND).si(),
                        "cube of 0.3048 m for 0.45359237 kg",
                        cubicFoot,
                        pound),
                new Definition(
                        Units.BTU_PER_HOUR,
                        Power.btuPerHour(1).si(),
                        "2326 J/kg x 0.45359237 kg, which is 1055.05585262 J, in 3600 s",
                        btu,
                        new BigDecimal("3600")),
                new Definition(
                        Units.POUND_FORCE,
                        Force.poundsForce(1).si(),
                        "0.45359237 kg under 9.80665 m/s2",
                        pound.multiply(gravity),
                        one),
                new Definition(
                        Units.SQUARE_MILLIMETRE,
                        Area.of(1, Units.SQUARE_MILLIMETRE).si(),
                        "square of 0.001 m",
                        one,
                        million),
                new Definition(
                        Units.SQUARE_INCH, Area.of(1, Units.SQUARE_INCH).si(), "square of 0.0254 m", inch.pow(2), one),
                new Definition(
                        Units.SECTION_CUBIC_METRE,
                        SectionModulus.of(1, Units.SECTION_CUBIC_METRE).si(),
                        "1 m3",
                        one,
                        one),
                new Definition(
                        Units.SECTION_CUBIC_CENTIMETRE,
                        SectionModulus.cubicCentimetres(1).si(),
                        "cube of 0.01 m",
                        one,
                        million),
                new Definition(
                        Units.SECTION_CUBIC_INCH,
                        SectionModulus.cubicInches(1).si(),
                        "cube of 0.0254 m",
                        inch.pow(3),
                        one),
                new Definition(
                        Units.QUARTIC_METRE,
                        SecondMoment.of(1, Units.QUARTIC_METRE).si(),
                        "1 m4",
                        one,
                        one),
                new Definition(
                        Units.QUARTIC_CENTIMETRE,
                        SecondMoment.quarticCentimetres(1).si(),
                        "fourth power of 0.01 m",
                        one,
                        new BigDecimal("1e8")),
                new Definition(
                        Units.QUARTIC_INCH,
                        SecondMoment.quarticInches(1).si(),
                        "fourth power of 0.0254 m",
                        inch.pow(4),
                        one),
                new Definition(
                        Units.PER_FAHRENHEIT_DEGREE,
                        LinearExpansion.perFahrenheitDegree(1).si(),
                        "1 in 5/9 K",
                        new BigDecimal("9"),
                        new BigDecimal("5")));
    }

    /** One unit takes a single rounding, the division, so the factor is the double nearest to the definition. */
    @ParameterizedTest
    @MethodSource("definitions")
    void isTheDoubleNearestToItsDefinition(Definition definition) {
        BigDecimal exact = definition.numerator().divide(definition.denominator(), DIGITS_34);
        assertThat(definition.si()).isEqualTo(exact.doubleValue());
    }

    @Test
    void noUnitIsLeftOut() throws Exception {
        Set<Unit<?>> checked = Collections.newSetFromMap(new IdentityHashMap<>());
        unitsThatIndriyaHas().forEach(row -> checked.add(row.unit()));
        definitions().forEach(definition -> checked.add(definition.unit()));
        for (Field field : Units.class.getFields()) {
            if (field.get(null) instanceof Unit<?> unit) {
                assertThat(checked.contains(unit)).as(field.getName()).isTrue();
            }
        }
    }

    @Test
    void conventionalConstants() throws Exception {
        assertThat(Units.STANDARD_GRAVITY.value())
                .isEqualTo(Imperial.STANDARD_GRAVITY
                        .getConverterTo(SI.METRE_PER_SQUARE_SECOND)
                        .convert(1.0));
        // 101 325 Pa exactly: resolution of the 10th CGPM, 1954 (from memory).
        assertThat(AbsolutePressure.STANDARD_ATMOSPHERE.si()).isEqualTo(101_325);
    }
}
