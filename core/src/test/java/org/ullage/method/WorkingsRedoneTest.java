package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Step;
import org.ullage.workings.Term;

/** Every step of every method is arithmetic that a reader can do again, on values that stand there before they are used. */
class WorkingsRedoneTest {

    /** What a loop is asked for or a step gives: it must have a step of its own before another uses it. */
    private static final Set<String> WORKED_OUT = Set.of(
            "V_s", "p_a", "p_st", "p_rule", "p_valve", "p_i", "p_f", "p_0", "e", "c", "V_e", "V_wr", "V_x", "V_gas",
            "V_acc");

    private static final VesselPlace AWAY = VesselPlace.AT_VALVE
            .withValveAbove(Length.metres(2))
            .withPumpAtTop(PressureDifference.bar(-0.05))
            .withPumpAtValve(PressureDifference.bar(0.1));

    private static final List<PressureInputs> PRESSURES = List.of(
            Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(8)),
            Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(7)).withPlace(AWAY),
            Jobs.HOUSE_BLOCK
                    .withStaticHead(Length.metres(7))
                    .withPlace(AWAY.withWeakest(new VesselPlace.WeakestPart(
                            GaugePressure.bar(3), Length.metres(1), PressureDifference.bar(0.2)))),
            PressureInputs.NONE
                    .withAtmosphere(AbsolutePressure.kilopascals(95))
                    .withColdPressure(GaugePressure.psi(12))
                    .withFinalPressure(GaugePressure.psi(30))
                    .withPreCharge(GaugePressure.psi(10)));

    static Stream<Sizing> sizings() {
        return Jobs.methods().stream()
                .flatMap(method -> method.kinds().stream()
                        .map(VesselType::of)
                        .flatMap(vessel -> PRESSURES.stream()
                                .flatMap(pressures -> Stream.of(TestFluid.WATER, TestFluid.MIXTURE)
                                        .map(fluid -> Jobs.with(
                                                Jobs.steel(
                                                        fluid,
                                                        vessel,
                                                        Temperature.celsius(10),
                                                        Temperature.celsius(80)),
                                                pressures)))
                                .flatMap(job -> sized(method, job))));
    }

    /** Rules made for one pressure or one charge refuse some of these jobs. */
    private static Stream<Sizing> sized(Method method, SizingJob job) {
        try {
            return Stream.of(method.size(job));
        } catch (OutOfRangeException refused) {
            return Stream.empty();
        }
    }

    @Test
    void everyMethodIsAmongThem() {
        assertThat(sizings().map(Sizing::method)).containsAll(Jobs.methods());
    }

    @ParameterizedTest
    @MethodSource("sizings")
    void everyStepCanBeDoneAgain(Sizing sizing) {
        Map<String, Double> known = new HashMap<>();
        for (Step step : sizing.workings().steps()) {
            for (Term term : step.terms()) {
                if (WORKED_OUT.contains(term.symbol())) {
                    assertThat(known).as(step.meaning()).containsKey(term.symbol());
                    assertThat(term.number()).as(step.meaning()).isEqualTo(known.get(term.symbol()));
                }
            }
            Term result = step.result();
            if (!step.terms().isEmpty() && !step.formula().startsWith("v(")) {
                assertThat(Redo.of(step))
                        .as("%s: %s", step.meaning(), step.formula())
                        .isCloseTo(result.number(), within(1e-9 * Math.abs(result.number()) + 1e-15));
            }
            known.put(result.symbol(), result.number());
        }
        assertThat(known.get("V_n")).isEqualTo(sizing.requiredVolume().si());
        assertThat(known).containsKeys("V_s", "e", "c", "V_e", "V_wr", "V_x");
        if (sizing.job().vessel().kind() != VesselKind.OPEN) {
            assertThat(known).containsKeys("p_a", "p_i", "p_f", "p_0");
        }
    }
}
