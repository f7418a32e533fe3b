package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** What must hold for every method, whatever its conventions. */
class SizingPropertiesTest {

    /** Relative rounding that the calculation's operations can add up to. */
    private static final double ROUNDING = 1e-11;

    @Provide
    Arbitrary<Method> methods() {
        return Arbitraries.of(Jobs.methods());
    }

    @Provide
    Arbitrary<Method> closedVesselMethods() {
        return Arbitraries.of(Jobs.methods()).filter(method -> method.kinds().contains(VesselKind.BLADDER));
    }

    @Property
    void volumesScaleWithTheContentsUnlessAReserveHasAFloor(
            @ForAll("methods") Method method, @ForAll @DoubleRange(min = 1, max = 100) double factor) {
        Sizing one = method.size(job(method, 1000, 80, 8, 3));
        Sizing many = method.size(job(method, 1000 * factor, 80, 8, 3));
        assertThat(many.requiredVolume().dividedBy(one.requiredVolume())).isCloseTo(factor, within(factor * ROUNDING));
    }

    @Property(edgeCases = EdgeCasesMode.NONE) // five parameters make more edge cases than tries
    void moreContentsHotterHigherOrLowerReliefNeverShrinkTheVessel(
            @ForAll("methods") Method method,
            @ForAll @DoubleRange(min = 10, max = 5000) double litres,
            @ForAll @DoubleRange(min = 50, max = 95) double hot,
            @ForAll @DoubleRange(min = 0, max = 12) double head,
            @ForAll @DoubleRange(min = 2.5, max = 8) double relief) {
        double base = required(method, litres, hot, head, relief);
        assertThat(required(method, litres * 1.1, hot, head, relief)).isGreaterThanOrEqualTo(base);
        assertThat(required(method, litres, hot + 1, head, relief)).isGreaterThanOrEqualTo(base);
        assertThat(required(method, litres, hot, head + 0.5, relief)).isGreaterThanOrEqualTo(base);
        assertThat(required(method, litres, hot, head, relief - 0.1)).isGreaterThanOrEqualTo(base);
    }

    /** Required volume in m3; a loop beyond what a method answers for asks for more than any vessel. */
    private static double required(Method method, double litres, double hot, double head, double relief) {
        try {
            return method.size(job(method, litres, hot, head, relief))
                    .requiredVolume()
                    .si();
        } catch (OutOfRangeException beyond) {
            return Double.POSITIVE_INFINITY;
        }
    }

    @Property
    void everyMethodAnswersForAnOrdinaryLoop(
            @ForAll("methods") Method method,
            @ForAll @DoubleRange(min = 10, max = 5000) double litres,
            @ForAll @DoubleRange(min = 50, max = 88) double hot) {
        assertThat(required(method, litres, hot, 8, 3)).isFinite();
    }

    @Property
    void checkingTheSizedVesselReturnsTheFinalPressure(
            @ForAll("closedVesselMethods") Method method,
            @ForAll @DoubleRange(min = 10, max = 5000) double litres,
            @ForAll @DoubleRange(min = 50, max = 88) double hot) {
        Sizing sizing = method.size(job(method, litres, hot, 8, 3));
        AbsolutePressure air = sizing.atmosphere();
        AbsolutePressure reached = GasLaw.finalPressure(
                sizing.requiredVolume(),
                sizing.acceptanceVolume(),
                sizing.preCharge().absolute(air),
                sizing.coldPressure().absolute(air));
        double wanted = sizing.finalPressure().absolute(air).si();
        assertThat(reached.si()).isCloseTo(wanted, within(wanted * ROUNDING));
    }

    @Property(tries = 5000, edgeCases = EdgeCasesMode.NONE)
    void everyInputGivesAFiniteAnswerOrARefusalThatSaysWhatToDo(
            @ForAll("methods") Method method,
            @ForAll VesselKind kind,
            @ForAll @DoubleRange(min = -300, max = 1000) double cold,
            @ForAll @DoubleRange(min = -300, max = 1000) double hot,
            @ForAll @DoubleRange(min = -20, max = 200) double head,
            @ForAll @DoubleRange(min = -2, max = 30) double relief) {
        try {
            Loop loop = Loop.withContents(Volume.litres(700)).copper().filledWith(TestFluid.WATER);
            PressureInputs pressures = PressureInputs.NONE
                    .withStaticHead(Length.metres(head))
                    .withReliefSetting(GaugePressure.bar(relief));
            Sizing sizing = method.size(new SizingJob(
                    loop,
                    VesselType.of(kind),
                    LoopTemperatures.between(Temperature.celsius(cold), Temperature.celsius(hot)),
                    pressures));
            assertThat(sizing.requiredVolume().si()).isPositive().isFinite();
            assertThat(sizing.workings().steps()).isNotEmpty();
            assertThat(sizing.warnings()).isNotNull();
        } catch (OutOfRangeException refusal) {
            assertThat(refusal.remedy()).isNotBlank();
            assertThat(refusal.getMessage()).doesNotContain("NaN");
        } catch (MissingInputException refusal) {
            assertThat(refusal.input()).isNotBlank();
        }
    }

    private static SizingJob job(Method method, double litres, double hot, double head, double relief) {
        Loop loop = Loop.withContents(Volume.litres(litres)).steel().filledWith(TestFluid.WATER);
        PressureInputs pressures =
                PressureInputs.NONE.withStaticHead(Length.metres(head)).withReliefSetting(GaugePressure.bar(relief));
        return new SizingJob(
                loop,
                method.kinds().contains(VesselKind.BLADDER) ? VesselType.bladder() : VesselType.open(),
                LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(hot)),
                pressures);
    }
}
