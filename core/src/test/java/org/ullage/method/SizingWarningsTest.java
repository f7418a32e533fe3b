package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.StaticHead;
import org.ullage.pressure.VesselPlace;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Caution;

class SizingWarningsTest {

    private static final Temperature TEN = Temperature.celsius(10);
    private static final Length HEAD = Length.metres(10);

    @Test
    void unknownPipeIsSaidByEveryRuleThatWouldCreditIt() {
        Loop unknown = Loop.withContents(Volume.litres(1000)).pipeNotStated().filledWith(TestFluid.WATER);
        SizingJob job = new SizingJob(
                unknown,
                VesselType.bladder(),
                LoopTemperatures.between(TEN, Temperature.celsius(80)),
                Jobs.HOUSE_BLOCK);
        for (Method method : List.of(Methods.ASHRAE, Methods.MASS_BALANCE)) {
            assertThat(texts(method.size(job))).anyMatch(text -> text.contains("no pipe credit was taken"));
        }
        assertThat(texts(Methods.EN_12828.size(job))).noneMatch(text -> text.contains("pipe credit"));
        assertThat(texts(Methods.ASME_IV.size(job))).noneMatch(text -> text.contains("net of steel pipe"));
    }

    @Test
    void pressureThatJustReachesTheTopIsNoVacuum() {
        GaugePressure head = GaugePressure.ofSi(StaticHead.of(HEAD).si());
        assertThat(texts(sized(80, stated(head.si()).withStaticHead(HEAD))))
                .noneMatch(text -> text.contains("under vacuum"));
    }

    /** 1.2 bar less 10 m of water leaves 1.23 bar abs at the top, where the test fluid boils at 100 degC under 1 bar. */
    @Test
    void pumpThatTakesPressureAwayAtTheTopMayLetItFlash() {
        PressureInputs quiet = stated(120_000).withStaticHead(HEAD);
        PressureInputs running = quiet.withPlace(VesselPlace.AT_VALVE.withPumpAtTop(PressureDifference.bar(-0.3)));
        assertThat(texts(sized(100, quiet))).noneMatch(text -> text.contains("flash"));
        assertThat(texts(sized(100, running))).anyMatch(text -> text.contains("flash"));
    }

    /** 12 psi reach 8.4 m; a pump that takes 0.1 bar away at the top leaves 7.4 m of them. */
    @Test
    void tableForOnePressureIsRefusedWhereTheRunningPumpNeedsMore() {
        PressureInputs low = Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(8));
        SizingJob job = Jobs.with(Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(80)), low);
        assertThat(Methods.IRC_M2003.size(job).requiredVolume().si()).isPositive();
        VesselPlace pumped = VesselPlace.AT_VALVE.withPumpAtTop(PressureDifference.bar(-0.1));
        assertThatThrownBy(() -> Methods.IRC_M2003.size(Jobs.with(job, low.withPlace(pumped))))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("cold pressure")
                .hasMessageContaining("12 psi");
    }

    private static PressureInputs stated(double coldPascals) {
        return PressureInputs.NONE
                .withColdPressure(GaugePressure.ofSi(coldPascals))
                .withFinalPressure(GaugePressure.bar(5));
    }

    private static Sizing sized(double hotCelsius, PressureInputs pressures) {
        return Methods.ASHRAE.size(Jobs.with(
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), TEN, Temperature.celsius(hotCelsius)), pressures));
    }

    private static List<String> texts(Sizing sizing) {
        return sizing.warnings().stream().map(Caution::text).toList();
    }
}
