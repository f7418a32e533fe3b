package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.StagnationContents;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** The quick way by itself: where it had no answer {@link SizingFunction} would ask the method, and nobody would see the difference. */
class ClosedSizingTest {

    private static final EnumSet<SizingInput> VARIED = EnumSet.of(SizingInput.CONTENTS);

    static List<Method> methods() {
        return Methods.all().stream()
                .filter(method -> method.kinds().contains(VesselKind.BLADDER))
                .filter(method -> method.coldPressure().fixed() == null)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void ordinaryJobsAreAnsweredAndAsTheMethodAnswersThem(Method method) {
        for (PressureInputs pressures : List.of(
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(1)).withFinalPressure(GaugePressure.bar(3)),
                Jobs.HOUSE_BLOCK.withReliefSetting(GaugePressure.bar(6)))) {
            SizingJob job = solar(pressures);
            VariedJob jobs = new VariedJob(job, VARIED);
            assertThat(ClosedSizing.canAnswer(method, jobs)).isTrue();
            assertThat(new ClosedSizing(method, jobs, null).cubicMetres(jobs.ownRow(method), 0))
                    .isEqualTo(method.size(job).requiredVolume().si());
        }
    }

    /** EN 12977-1 counts the 30 L of the collectors and no pipe; all else is the same without them. */
    @Test
    void vapourCountsInLoopsThatBoil() {
        VariedJob jobs = new VariedJob(solar(Jobs.HOUSE_BLOCK.withReliefSetting(GaugePressure.bar(6))), VARIED);
        Method boils = Methods.EN_12977_1;
        Method doesNot = boils.withVapourOf(Methods.RACCOLTA_R);
        double with = new ClosedSizing(boils, jobs, null).cubicMetres(jobs.ownRow(boils), 0);
        double without = new ClosedSizing(doesNot, jobs, null).cubicMetres(jobs.ownRow(doesNot), 0);
        Sizing sizing = boils.size(jobs.job());
        assertThat((with - without) / with)
                .isCloseTo(0.030 / sizing.acceptanceVolume().si(), within(1e-12));
    }

    @Test
    void whatIsMissingLeavesTheAnswerToTheMethod() {
        SizingJob job = solar(Jobs.HOUSE_BLOCK);
        SizingJob hotOnly = new SizingJob(
                job.loop(), job.vessel(), LoopTemperatures.between(null, Temperature.celsius(80)), job.pressures());
        SizingJob coldOnly = new SizingJob(
                job.loop(), job.vessel(), LoopTemperatures.between(Temperature.celsius(10), null), job.pressures());
        SizingJob notSolar =
                Jobs.steel(TestFluid.WATER, job.vessel(), Temperature.celsius(10), Temperature.celsius(80));
        assertThat(canAnswer(Methods.ASHRAE, hotOnly)).isFalse();
        assertThat(canAnswer(Methods.ASHRAE, coldOnly)).isFalse();
        assertThat(canAnswer(Methods.RACCOLTA_R, hotOnly)).isTrue();
        assertThat(canAnswer(Methods.RACCOLTA_R, coldOnly)).isFalse();
        assertThat(canAnswer(Methods.IDAE_022, notSolar)).isFalse();
        assertThat(canAnswer(Methods.ASHRAE, notSolar)).isTrue();
    }

    private static boolean canAnswer(Method method, SizingJob job) {
        return ClosedSizing.canAnswer(method, new VariedJob(job, VARIED));
    }

    private static SizingJob solar(PressureInputs pressures) {
        Loop loop = Loop.withContents(Volume.litres(1000))
                .steel()
                .filledWith(TestFluid.WATER)
                .stagnating(new StagnationContents(Volume.litres(30), Volume.litres(10)));
        return new SizingJob(
                loop,
                VesselType.bladder(),
                LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(80)),
                pressures);
    }
}
