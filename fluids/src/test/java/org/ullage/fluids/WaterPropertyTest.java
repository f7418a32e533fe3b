package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.OutOfRangeException;

/** What must hold for water of any state, with no table to compare with. */
class WaterPropertyTest {

    private static final double MAXIMUM_DENSITY_KELVINS = 277.15;

    @Provide
    Arbitrary<LoopFluid> models() {
        return Arbitraries.of(Water.IAPWS_IF97, Water.KELL_1975, Water.SATURATED_TABLE);
    }

    /** Any double at all, the special ones often, and enough that lie near a sensible state. */
    @Provide
    Arbitrary<Double> anyNumber() {
        return Arbitraries.oneOf(
                Arbitraries.doubles(),
                Arbitraries.doubles().between(250, 650),
                Arbitraries.doubles().between(0, 2e8),
                Arbitraries.of(
                        Double.NaN,
                        Double.POSITIVE_INFINITY,
                        Double.NEGATIVE_INFINITY,
                        Double.MIN_VALUE,
                        Double.MAX_VALUE,
                        -0.0,
                        Math.nextDown(273.15),
                        Math.nextUp(623.15)));
    }

    @Property(shrinking = ShrinkingMode.OFF)
    void anyStateGivesAPositiveNumberOrARefusal(
            @ForAll("models") LoopFluid model,
            @ForAll("anyNumber") double kelvins,
            @ForAll("anyNumber") double pascals) {
        answer(() -> model.specificVolumeSi(kelvins, pascals))
                .ifPresent(volume -> assertThat(volume).isBetween(0.0009, 0.0018));
        answer(() -> model.vapourPressureSi(kelvins))
                .ifPresent(pressure -> assertThat(pressure).isBetween(611.0, 16.6e6));
    }

    private static OptionalDouble answer(DoubleSupplier question) {
        try {
            return OptionalDouble.of(question.getAsDouble());
        } catch (OutOfRangeException refusal) {
            return OptionalDouble.empty();
        }
    }

    @Property
    void liquidIsAcceptedFromTheVapourPressureUpAndSteamIsNot(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins) {
        double boiling = Water.IAPWS_IF97.vapourPressureSi(kelvins);
        assertThat(answer(() -> Water.IAPWS_IF97.specificVolumeSi(kelvins, boiling)))
                .isPresent();
        assertThat(answer(() -> Water.IAPWS_IF97.specificVolumeSi(kelvins, Math.nextDown(boiling))))
                .isEmpty();
    }

    /** The quick check may skip the exact vapour pressure but never differ from it; the share puts many states near the line. */
    @Property
    void quickLiquidCheckIsTheExactOne(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 0.5, max = 2) @Scale(9) double share) {
        double boiling = Water.IAPWS_IF97.vapourPressureSi(kelvins);
        double pascals = share * boiling;
        assertThat(Water.IAPWS_IF97.isLiquidSi(kelvins, pascals)).isEqualTo(pascals >= boiling);
        assertThat(Water.IAPWS_IF97.isLiquidSi(kelvins, boiling)).isTrue();
    }

    @Property
    void pressureCompresses(
            @ForAll @DoubleRange(min = 273.15, max = 623.15) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 16.6e6, max = 99e6) @Scale(9) double pascals) {
        assertThat(Water.IAPWS_IF97.specificVolumeSi(kelvins, pascals + 1e4))
                .isLessThan(Water.IAPWS_IF97.specificVolumeSi(kelvins, pascals));
    }

    @Property
    void if97ExpandsWithTemperatureAboveFourDegrees(
            @ForAll @DoubleRange(min = MAXIMUM_DENSITY_KELVINS, max = 623) @Scale(9) double kelvins,
            @ForAll @DoubleRange(min = 16.6e6, max = 100e6) @Scale(9) double pascals) {
        assertThat(Water.IAPWS_IF97.specificVolumeSi(kelvins + 0.1, pascals))
                .isGreaterThan(Water.IAPWS_IF97.specificVolumeSi(kelvins, pascals));
    }

    @Property
    void everyModelExpandsWithTemperatureUnderALoopPressure(
            @ForAll("models") LoopFluid model, @ForAll @DoubleRange(min = 278, max = 420) @Scale(9) double kelvins) {
        double pascals = 5e5;
        assertThat(model.specificVolumeSi(kelvins + 0.1, pascals))
                .isGreaterThan(model.specificVolumeSi(kelvins, pascals));
    }

    /** 12 ppm is the largest difference below 100 degC in the check table, which has steps of 20 K. */
    @Property
    void kellAgreesWithIf97AtOneAtmosphere(@ForAll @DoubleRange(min = 273.15, max = 373.1) @Scale(9) double kelvins) {
        double byIf97 = Water.IAPWS_IF97.specificVolumeSi(kelvins, 101_325);
        assertThat(Water.KELL_1975.specificVolumeSi(kelvins, 101_325)).isCloseTo(byIf97, within(13e-6 * byIf97));
    }

    /** 15 ppm is what the choice of the spline promises. */
    @Property
    void tableAgreesWithIf97AtSaturation(@ForAll @DoubleRange(min = 277.6, max = 422) @Scale(9) double kelvins) {
        double pascals = Water.IAPWS_IF97.vapourPressureSi(kelvins);
        double byIf97 = Water.IAPWS_IF97.specificVolumeSi(kelvins, pascals);
        assertThat(Water.SATURATED_TABLE.specificVolumeSi(kelvins, pascals)).isCloseTo(byIf97, within(15e-6 * byIf97));
    }
}
