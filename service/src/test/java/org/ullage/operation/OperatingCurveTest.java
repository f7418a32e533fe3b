package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;

/** Pressure against temperature, by hand: a fluid of 0.0005 per kelvin of its volume at 0 degC, air at 1 bar. */
class OperatingCurveTest {

    /** 625 L at 0 degC and 1 bar, 100 L vessel charged to 0.5 bar: 75 L of gas, 25 L of water. */
    private static final LoopInUse ROUND =
            loop(625, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 100, 0.5)), reading(1, 0));

    private static double bar(LoopInUse inUse, double celsius) {
        return inUse.curve().pressure(Temperature.celsius(celsius)).in(Units.BAR);
    }

    @Test
    void byHand() {
        // 625 x 0.0005 x 80 = 25 L: 75 x 2 / (75 - 25) = 3 bar abs
        assertThat(bar(ROUND, 80)).isCloseTo(2, within(1e-9));
        assertThat(bar(ROUND, 0)).isCloseTo(1, within(1e-12));
        OperatingPoint point = ROUND.curve().at(Temperature.celsius(80));
        assertThat(point.state()).isEqualTo(LoopState.CUSHIONED);
        assertThat(point.water().in(Units.LITRE)).isCloseTo(50, within(1e-9));
        assertThat(point.acceptanceLeft().in(Units.LITRE)).isCloseTo(50, within(1e-9));
        assertThat(point.text(UnitSystem.SI)).isEqualTo("80 degC: 2 bar, 50 L in the vessels");
    }

    @Test
    void coldWaterInTheVesselTakesLessRoom() {
        // 625 - 625/1.04 kg x 0.001 at 0 degC = 24.038 L
        assertThat(bar(ROUND.with(VesselWater.at(Temperature.celsius(0))), 80))
                .isCloseTo(150 / (75 - 25 / 1.04) - 1, within(1e-9));
        // all of it as warm: 25 L of old water grow by 1 L
        assertThat(bar(ROUND.with(VesselWater.AS_WARM_AS_LOOP), 80)).isCloseTo(150 / 49.0 - 1, within(1e-9));
    }

    @Test
    void steelGrowsWithTheFluid() {
        LoopInUse steel =
                ROUND.with(Loop.withContents(Volume.litres(625)).steel().filledWith(TestFluid.WATER));
        // 625 x (0.04 - 3 x 11.7e-6 x 80) = 23.245 L
        assertThat(bar(steel, 80)).isCloseTo(150 / (75 - 23.245) - 1, within(1e-9));
    }

    @Test
    void coolingTakesWaterBackUntilTheVesselIsEmpty() {
        LoopInUse warm = ROUND.filledTo(reading(1, 80));
        // back to 0 degC: 625 x (1.04 - 1) = 25 L, just all of it: charge pressure
        assertThat(bar(warm, 0)).isCloseTo(0.5, within(1e-9));
        assertThat(bar(warm, 40)).isCloseTo(150 / (75 + 625 * (1.04 / 1.02 - 1)) - 1, within(1e-9));
        OperatingPoint frozen = warm.curve().at(Temperature.celsius(-5));
        assertThat(frozen.state()).isEqualTo(LoopState.VESSELS_EMPTY);
        assertThat(frozen.pressure()).isNull();
        assertThat(frozen.text(UnitSystem.SI))
                .isEqualTo(
                        "-5 degC: no pressure to give; the vessels are empty of water: the pressure falls away and air"
                                + " may be drawn in at the top");
        assertThatThrownBy(() -> bar(warm, -5))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("the vessels are empty of water");
        Temperature empty = new CurveLimits(warm.curve()).emptyBelow();
        assertThat(empty.in(Units.CELSIUS)).isCloseTo(0, within(1e-6));
    }

    @Test
    void limitsOfTheCurve() {
        CurveLimits limits = new CurveLimits(ROUND.curve());
        assertThat(limits.warmestBelow(GaugePressure.bar(2)).in(Units.CELSIUS)).isCloseTo(80, within(1e-6));
        assertThat(limits.warmestBelow(GaugePressure.bar(1)).in(Units.CELSIUS)).isCloseTo(0, within(1e-6));
        assertThat(limits.warmestBelow(GaugePressure.bar(30)))
                .as("boils first or the model ends")
                .isNull();
        assertThatThrownBy(() -> limits.warmestBelow(GaugePressure.bar(0.9)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("pressure limit 0.9 bar");
        // 25 L of water in the vessel last for 625 x 0.0005 x 80 K below zero, further than the model goes
        assertThat(limits.emptyBelow()).isNull();
    }

    @Test
    void chargedToTheFillPressureOrAbove() {
        LoopInUse equal = ROUND.with(bank(vessel("V", 100, 1)));
        assertThat(bar(equal, 0)).isCloseTo(1, within(1e-12));
        assertThat(equal.curve().at(Temperature.celsius(-1)).state()).isEqualTo(LoopState.VESSELS_EMPTY);
        LoopInUse above = ROUND.with(bank(vessel("V", 100, 1.5)));
        assertThat(bar(above, 40)).isCloseTo(2.5 * 100 / (100 - 12.5) - 1, within(1e-9));
        assertThat(above.curve().cautions())
                .extracting(Caution::text)
                .anyMatch(text -> text.startsWith("The loop was left below the lowest charge"));
    }

    @Test
    void fullOfALiquidWithoutKnownCompression() {
        LoopInUse stopped = ROUND.with(bank(vessel("V", 100, 0.5).withAcceptanceLimit(Volume.litres(40))));
        assertThat(bar(stopped, 40)).isCloseTo(bar(ROUND, 40), within(1e-9));
        OperatingPoint full = stopped.curve().at(Temperature.celsius(80));
        assertThat(full.state()).isEqualTo(LoopState.LIQUID_FULL);
        assertThat(full.pressure()).isNull();
        assertThat(full.acceptanceLeft()).isEqualTo(Volume.litres(0));
    }

    @Test
    void fullOfSpringyLiquidTheSlopeIsThatOfLockedLiquid() {
        PipeWall wall = new PipeWall(WallMaterial.STEEL, Length.millimetres(154.05), Length.millimetres(7.11));
        PipeMaterial steel =
                new PipeMaterial("steel", WallMaterial.STEEL.linearExpansion(), WallMaterial.STEEL.source());
        VesselBank stop = bank(vessel("V", 100, 0.5).withAcceptanceLimit(Volume.litres(10)));
        LoopInUse inUse = loop(1000, steel, InUse.SPRINGY, stop, reading(1, 20)).with(wall);
        OperatingCurve curve = inUse.curve();
        Temperature near = Temperature.celsius(21);
        OperatingPoint full = curve.at(near);
        assertThat(full.state()).isEqualTo(LoopState.LIQUID_FULL);
        assertThat(full.text(UnitSystem.IP)).contains("rises by bars for each kelvin");
        double slope = (curve.pressureSi(294.16) - curve.pressureSi(294.14)) / 0.02;
        double locked = LockedLiquid.rigid(InUse.SPRINGY, near, full.pressure().absolute(InUse.ONE_BAR))
                .in(wall)
                .slopeSi();
        // The 10 L of liquid in the vessel are compressed with the 1000 L of the loop, and do not warm up.
        assertThat(slope).isCloseTo(locked, within(locked * 0.01));
    }

    @Test
    void closedFormIsTheSearchToo() {
        for (LoopFluid fluid : List.of(InUse.SPRINGY, TestFluid.WATER)) {
            OperatingNumbers numbers = loop(500, PipeMaterial.COPPER, fluid, bank(vessel("V", 60, 1)), reading(1.3, 15))
                    .curve()
                    .numbers();
            for (double kelvins = 289; kelvins < 350; kelvins += 3.7) {
                double lowest = Math.max(2e5, numbers.loop().boilingPressure(kelvins));
                double closed = numbers.closed(kelvins);
                assertThat(closed).isGreaterThan(0);
                assertThat(numbers.bracketed(kelvins, lowest)).isCloseTo(closed, within(closed * 1e-10));
                assertThat(numbers.pressure(kelvins)).isCloseTo(closed, within(closed * 1e-12));
            }
        }
    }

    @Test
    void aLoopThatWouldBoilGivesNoPressure() {
        OperatingPoint point = loop(
                        10, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 100, 0)), reading(0.1, 20))
                .curve()
                .at(Temperature.celsius(120));
        assertThat(point.state()).isEqualTo(LoopState.BOILING);
        assertThat(point.pressure()).isNull();
    }

    @Test
    void samples() {
        List<OperatingPoint> points = ROUND.curve().sample(Temperature.celsius(0), Temperature.celsius(80), 4);
        assertThat(points).hasSize(5);
        assertThat(ROUND.curve().sample(Temperature.celsius(0), Temperature.celsius(80), 1))
                .hasSize(2);
        assertThat(points.get(4).pressure().in(Units.BAR)).isCloseTo(2, within(1e-9));
        assertThatThrownBy(() -> ROUND.curve().sample(Temperature.celsius(0), Temperature.celsius(80), 0))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void workingsLeadToThePressure() {
        Temperature hot = Temperature.celsius(80);
        String text = ROUND.curve().workings(hot).text(UnitSystem.SI);
        assertThat(text)
                .contains("V_s * (1 + 3 * alpha * dt)")
                .contains("V_1 + (m_v - V_1 / v_v) * v_2")
                .contains("p_0 / (1 - V_w / V_n)")
                .contains("= 1.5 bar abs / (1 - 50 L / 100 L)")
                .contains("= 3 bar abs");
        assertThat(ROUND.with(VesselWater.at(hot)).curve().workings(hot).text(UnitSystem.IP))
                .contains("m_v * v_v");
        LoopInUse raised = ROUND.with(bank(vessel("A", 100, 0.5).standing(Length.metres(1)), vessel("B", 100, 0.5)));
        assertThat(raised.curve().workings(hot).text(UnitSystem.SI)).contains("found by a search");
        LoopInUse one = ROUND.with(bank(vessel("A", 100, 0.5).standing(Length.metres(1))));
        assertThat(one.curve().workings(hot).text(UnitSystem.SI)).contains("p_0 / (1 - V_w / V_n) + p_h");
    }

    @Test
    void cautionsSayWhatIsAssumed() {
        LoopInUse unknown =
                ROUND.with(Loop.withContents(Volume.litres(625)).pipeNotStated().filledWith(TestFluid.WATER));
        assertThat(unknown.curve().cautions())
                .extracting(Caution::text)
                .anyMatch(text -> text.contains("no sign of failure"))
                .anyMatch(text -> text.contains("water enters the vessels as warm as the loop"))
                .anyMatch(text -> text.contains("pipe material is not stated"))
                .anyMatch(text -> text.contains("relief valve stays"));
        assertThat(ROUND.curve().cautions()).hasSize(3);
        assertThatThrownBy(() -> new VesselWater(VesselWater.Kind.OWN_TEMPERATURE, null))
                .isInstanceOf(MissingInputException.class);
    }

    @Test
    void theCurveSurvivesAStream() throws IOException, ClassNotFoundException {
        OperatingCurve curve = loop(
                        500,
                        PipeMaterial.STEEL,
                        InUse.SPRINGY,
                        bank(vessel("A", 60, 1), vessel("B", 30, 1.2)),
                        reading(1.3, 15))
                .curve();
        OperatingCurve again = (OperatingCurve) InUse.throughAStream(curve);
        assertThat(again.pressureSi(340)).isEqualTo(curve.pressureSi(340));
        assertThat(again.inUse().text(UnitSystem.IP)).isEqualTo(curve.inUse().text(UnitSystem.IP));
        OperatingBand band = new OperatingBand(List.of(curve));
        assertThat(((OperatingBand) InUse.throughAStream(band)).highest(Temperature.celsius(60)))
                .isEqualTo(band.highest(Temperature.celsius(60)));
    }

    @Test
    void contentsWithoutAFiniteMassAreRefused() {
        Loop loop = Loop.withContents(Volume.ofSi(1e308)).rigid().filledWith(TestFluid.WATER);
        LoopInUse endless = LoopInUse.of(loop, bank(vessel("V", 80, 1)), reading(1.2, 20));
        assertThatThrownBy(endless::curve)
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("contents of the loop");
    }
}
