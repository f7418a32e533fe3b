package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.provenance.Source;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Step;

class SizingWorkingsTest {

    private static final Temperature TEN = Temperature.celsius(10);
    private static final Temperature EIGHTY = Temperature.celsius(80);

    static List<Method> methods() {
        return Jobs.methods();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void lastStepIsTheAnswerAndEveryStepHasASource(Method method) {
        VesselType vessel = method.kinds().contains(VesselKind.BLADDER) ? VesselType.bladder() : VesselType.open();
        PressureInputs low = Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(8));
        Sizing sizing = method.size(Jobs.with(Jobs.steel(TestFluid.WATER, vessel, TEN, EIGHTY), low));
        List<Step> steps = sizing.workings().steps();
        assertThat(steps.get(steps.size() - 1).result().number())
                .isEqualTo(sizing.requiredVolume().si());
        assertThat(steps)
                .allSatisfy(step -> assertThat(step.source().document()).isNotBlank());
    }

    @Test
    void openTankEndsInItsAllowance() {
        Sizing sizing = Methods.ASHRAE.size(Jobs.steel(TestFluid.WATER, VesselType.open(), TEN, EIGHTY));
        List<Step> steps = sizing.workings().steps();
        assertThat(steps.get(steps.size() - 1).formula()).isEqualTo("V_x * k_open");
        assertThat(steps.get(steps.size() - 1).result().number())
                .isEqualTo(sizing.requiredVolume().si());
    }

    @Test
    void formulaIsShownWithItsValuesInBothSystems() {
        PressureInputs pressures = PressureInputs.NONE
                .withAtmosphere(AbsolutePressure.psi(14.7))
                .withColdPressure(GaugePressure.psi(10))
                .withFinalPressure(GaugePressure.psi(25));
        Sizing sizing = Methods.ASHRAE.size(
                Jobs.with(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, EIGHTY), pressures));
        String inchPound = sizing.workings().text(UnitSystem.IP);
        assertThat(inchPound).contains("p_i   = p_gauge + p_a", "= 10 psi + 14.7 psi abs", "= 24.7 psi abs");
        assertThat(inchPound).contains("3 * 0.0000065 1/degF * 126 degF");
        assertThat(sizing.workings().text(UnitSystem.SI)).contains("= 1000 L * (0.0348259 - 0.002457)");
    }

    @Test
    void stepsOfThePressuresShowTheMethodsMargins() {
        Sizing sizing = Methods.EN_12828.size(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, EIGHTY));
        String text = sizing.workings().text(UnitSystem.SI);
        assertThat(text)
                .contains("max(p_st + d_cold + p_a, p_st + p_vap)")
                .contains("min(share * p_set, p_set - d_set) + p_a")
                .contains("max(r_s * V_s, V_least)")
                .contains("FROM_MEMORY");
    }

    @Test
    void unknownAcceptanceLimitIsSaid() {
        Sizing sizing = Methods.ASHRAE.size(Jobs.steel(TestFluid.WATER, VesselType.diaphragm(), TEN, EIGHTY));
        assertThat(sizing.workings().text(UnitSystem.SI)).contains("acceptance limit not known");
    }

    @Test
    void hotTemperatureIsAmongTheGivenOnesWhereItWasGiven() {
        SizingJob job = Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, EIGHTY);
        assertThat(text(Methods.ASHRAE, job)).contains("t_hot");
        PressureInputs low = Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(8));
        SizingJob tableOnly = new SizingJob(job.loop(), job.vessel(), LoopTemperatures.between(TEN, null), low);
        assertThat(text(Methods.IRC_M2003, tableOnly)).doesNotContain("t_hot");
    }

    @Test
    void pipeThatWasNotGivenIsSaidInItsStep() {
        Loop unknown = Loop.withContents(Volume.litres(1000)).pipeNotStated().filledWith(TestFluid.WATER);
        SizingJob job = Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, EIGHTY);
        assertThat(text(Methods.ASHRAE, job)).doesNotContain("pipe material not given");
        assertThat(text(Methods.ASHRAE, job.with(unknown)))
                .contains("pipe material not given")
                .doesNotContain("3 * alpha * dt");
    }

    @Test
    void gasTemperaturesAndThePlaceOfTheValveShowOnlyWhereTheyDiffer() {
        SizingJob job = Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, EIGHTY);
        GasTemperatures warm = new GasTemperatures(Temperature.celsius(20), TEN, EIGHTY, Source.given());
        assertThat(text(Methods.ASHRAE, job)).doesNotContain("g_i").doesNotContain("p_valve");
        assertThat(text(Methods.ASHRAE.with(warm), job)).contains("V_x / (a - (1 - p_0 * g_i / p_i))");
        VesselPlace below = VesselPlace.AT_VALVE.withValveAbove(Length.metres(2));
        assertThat(text(Methods.ASHRAE, Jobs.with(job, Jobs.HOUSE_BLOCK.withPlace(below))))
                .contains("p_valve + d_valve");
    }

    private static String text(Method method, SizingJob job) {
        return method.size(job).workings().text(UnitSystem.SI);
    }
}
