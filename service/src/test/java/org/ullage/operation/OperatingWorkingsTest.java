package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.loop.Loop;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.workings.Step;

/** The printed steps, done again with their own numbers. */
class OperatingWorkingsTest {

    private static final PipeWall WALL =
            new PipeWall(WallMaterial.STEEL, Length.millimetres(52.5), Length.millimetres(3.91));

    private static final LoopInUse SPRINGY =
            loop(500, PipeMaterial.STEEL, InUse.SPRINGY, bank(vessel("V", 60, 1)), reading(1.3, 15));

    /** 625 L at 0 degC and 1 bar, 100 L vessel charged to 0.5 bar: 75 L of gas, 25 L of water. */
    private static final LoopInUse ROUND =
            loop(625, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 100, 0.5)), reading(1, 0));

    private static List<Step> steps(LoopInUse inUse, double celsius) {
        return inUse.curve().workings(Temperature.celsius(celsius)).steps();
    }

    private static double term(Step step, String symbol) {
        return step.terms().stream()
                .filter(term -> term.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .number();
    }

    private static Step step(List<Step> steps, String result) {
        return steps.stream()
                .filter(step -> step.result().symbol().equals(result))
                .findFirst()
                .orElseThrow();
    }

    private static double number(List<Step> steps, String result) {
        return step(steps, result).result().number();
    }

    @ParameterizedTest
    @CsvSource({"40", "70"})
    void massesAndRoomCanBeRedone(double celsius) {
        List<Step> steps = steps(SPRINGY.with(WALL), celsius);
        Step room = step(steps, "V_2");
        double grown = term(room, "V_s") * (1 + 3 * term(room, "alpha") * term(room, "dt")) * (1 + term(room, "s"));
        assertThat(room.formula()).isEqualTo("V_s * (1 + 3 * alpha * dt) * (1 + s)");
        assertThat(room.meaning()).contains("stretch of the pipe");
        assertThat(room.source()).isEqualTo(PipeMaterial.STEEL.source());
        assertThat(term(room, "dt")).isCloseTo(celsius - 15, within(1e-9));
        assertThat(term(room, "s")).isPositive();
        assertThat(grown / room.result().number()).isCloseTo(1, within(1e-12));
        Step inLoop = step(steps, "m_2");
        assertThat(inLoop.result().number()).isCloseTo(room.result().number() / term(inLoop, "v_2"), within(1e-9));
        assertThat(number(steps, "m_v")).isCloseTo(number(steps, "m") - number(steps, "m_2"), within(1e-9));
        Step pressure = step(steps, "p");
        assertThat(pressure.result().number())
                .isCloseTo(term(pressure, "p_0") / (1 - term(pressure, "V_w") / term(pressure, "V_n")), within(1e-3));
    }

    @Test
    void aPipeThatDoesNotStretchHasNoStretch() {
        Step room = step(steps(SPRINGY, 70), "V_2");
        assertThat(room.formula()).isEqualTo("V_s * (1 + 3 * alpha * dt)");
        assertThat(room.meaning()).isEqualTo("room in the loop");
        Step notStated = step(
                steps(
                        ROUND.with(Loop.withContents(Volume.litres(625))
                                .pipeNotStated()
                                .filledWith(TestFluid.WATER)),
                        70),
                "V_2");
        assertThat(notStated.source().toString()).contains("a pipe that is not stated");
    }

    @Test
    void waterThatIsAsWarmAsTheLoopTakesItsVolume() {
        Step water = step(steps(ROUND.with(VesselWater.AS_WARM_AS_LOOP), 80), "V_w");
        assertThat(water.formula()).isEqualTo("m_v * v_v");
        assertThat(term(water, "v_v")).isCloseTo(0.00104, within(1e-12));
        assertThat(water.result().number()).isCloseTo(term(water, "m_v") * term(water, "v_v"), within(1e-12));
        assertThat(water.meaning()).contains("as warm as the loop");
    }

    @Test
    void waterThatKeepsItsTemperatureTakesItsOwnVolume() {
        Step water = step(steps(ROUND.with(VesselWater.at(Temperature.celsius(20))), 80), "V_w");
        assertThat(term(water, "v_v")).isCloseTo(0.00101, within(1e-12));
        assertThat(water.result().number()).isCloseTo(term(water, "m_v") * term(water, "v_v"), within(1e-12));
        assertThat(water.meaning()).contains("water in the vessels at 20 degC");
    }

    /** Filled at 80 degC and cooled, the vessel gives back water it had: nothing came in. */
    @Test
    void aCoolingLoopTakesOldWaterBack() {
        Step water = step(steps(ROUND.filledTo(reading(1, 80)), 40), "V_w");
        assertThat(water.formula()).isEqualTo("m_v * v_v");
        assertThat(water.result().number()).isCloseTo(term(water, "m_v") * term(water, "v_v"), within(1e-12));
    }

    @Test
    void warmWaterThatCameInIsCountedWarm() {
        Step water = step(steps(ROUND, 80), "V_w");
        assertThat(water.result().number())
                .isCloseTo(
                        term(water, "V_1")
                                + (term(water, "m_v") - term(water, "V_1") / term(water, "v_v")) * term(water, "v_2"),
                        within(1e-12));
    }
}
