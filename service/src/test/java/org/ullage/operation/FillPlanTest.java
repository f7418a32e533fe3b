package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Jobs;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.provenance.Source;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselType;

/** The test fluid has v = 0.001 (1 + 0.0005 t), so 1000 L change by 1000 (0.0005 dt)/(1 + 0.0005 t). */
class FillPlanTest {

    private static final Temperature SIX = Temperature.celsius(6);
    private static final Temperature THIRTY_FIVE = Temperature.celsius(35);

    private static Sizing chilled() {
        return Methods.EN_12828.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), SIX, THIRTY_FIVE));
    }

    @Test
    void chilledLoopFilledWarmPutsItsContractionIntoTheVessel() {
        Sizing sizing = chilled();
        FillPlan plan = FillPlan.of(sizing, Volume.litres(100), Temperature.celsius(20));
        assertThat(plan.contraction().in(Units.LITRE)).isCloseTo(1000 * 0.007 / 1.003, within(1e-9));
        assertThat(plan.expansion().in(Units.LITRE)).isCloseTo(1000 * 0.0075 / 1.01, within(1e-9));
        double inVessel = GasLaw.waterInVessel(
                        Volume.litres(100),
                        sizing.preCharge().absolute(sizing.atmosphere()),
                        plan.window().lowest())
                .in(Units.LITRE);
        assertThat(inVessel).isCloseTo(sizing.reserveVolume().in(Units.LITRE) + 1000 * 0.007 / 1.003, within(1e-9));
        assertThat(plan.text(UnitSystem.SI)).startsWith("fill to between ");
    }

    @Test
    void filledColdThereIsNoContractionToCome() {
        FillPlan plan = FillPlan.of(chilled(), Volume.litres(100), SIX);
        assertThat(plan.contraction()).isEqualTo(Volume.litres(0));
        assertThat(plan.expansion().in(Units.LITRE)).isCloseTo(1000 * 0.0145 / 1.003, within(1e-9));
        assertThat(FillPlan.of(chilled(), Volume.litres(100), THIRTY_FIVE).lowest())
                .isGreaterThan(plan.lowest());
    }

    @Test
    void smallVesselLeavesNoWindow() {
        FillPlan plan = FillPlan.of(chilled(), Volume.litres(25), Temperature.celsius(20));
        assertThat(plan.window().isOpen()).isFalse();
        assertThat(plan.text(UnitSystem.SI)).startsWith("no fill pressure will do");
    }

    @Test
    void fillTemperatureOutsideTheLoopsRangeIsRefused() {
        assertThatThrownBy(() -> FillPlan.of(chilled(), Volume.litres(100), Temperature.celsius(40)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("fill temperature 40 degC")
                .hasMessageContaining("35 degC");
    }

    @Test
    void bothEndsMustBeKnown() {
        Sizing hotOnly =
                Methods.EN_12828.size(Jobs.steel(TestFluid.WATER, VesselType.bladder(), null, Temperature.celsius(80)));
        assertThatThrownBy(() -> FillPlan.of(hotOnly, Volume.litres(100), Temperature.celsius(20)))
                .isInstanceOf(MissingInputException.class)
                .hasMessageContaining("lowest temperature");
    }

    @ParameterizedTest
    @ValueSource(doubles = {6, 35})
    void vesselOfExactlyTheSizeLeavesOnePressureAtEitherEnd(double celsius) {
        // the pipe's growth counts as it does in the sizing
        Sizing exact = Methods.ASHRAE.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), SIX, THIRTY_FIVE));
        FillPlan plan = FillPlan.of(exact, exact.requiredVolume(), Temperature.celsius(celsius));
        assertThat(plan.window().lowest().si() / plan.window().highest().si()).isCloseTo(1, within(1e-9));
    }

    @Test
    void pipeCountsOnlyWhereTheMethodCountsIt() {
        Sizing credited = Methods.ASHRAE.size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), SIX, THIRTY_FIVE));
        double growth = 3 * 11.7e-6; // steel, 1/K
        FillPlan plan = FillPlan.of(credited, Volume.litres(100), Temperature.celsius(20));
        assertThat(plan.expansion().in(Units.LITRE)).isCloseTo(1000 * (0.0075 / 1.01 - 15 * growth), within(1e-9));
        assertThat(plan.contraction().in(Units.LITRE)).isCloseTo(1000 * (0.007 / 1.003 - 14 * growth), within(1e-9));
    }

    @Test
    void gasTemperaturesOfTheMethodCount() {
        Temperature twenty = Temperature.celsius(20);
        GasTemperatures own =
                new GasTemperatures(twenty, Temperature.celsius(10), Temperature.celsius(30), Source.given());
        Sizing sizing =
                Methods.EN_12828.with(own).size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), SIX, THIRTY_FIVE));
        // the loop is 14/29 of the way up, so the gas is at 10 + 20 x 14/29 degC
        double filled = (283.15 + 20.0 * 14 / 29) / 293.15;
        double hot = 303.15 / 293.15;
        double charge = sizing.preCharge().absolute(sizing.atmosphere()).si();
        double last = sizing.finalPressure().absolute(sizing.atmosphere()).si();
        double held = sizing.reserveVolume().in(Units.LITRE) + 7 / 1.003;
        FillPlan plan = FillPlan.of(sizing, Volume.litres(100), twenty);
        assertThat(plan.window().lowest().si()).isCloseTo(charge * filled * 100 / (100 - held), within(1e-6));
        assertThat(plan.window().highest().si())
                .isCloseTo(charge * filled * 100 / (100 * charge * hot / last + 7.5 / 1.01), within(1e-6));
        FillPlan measured = FillPlan.of(sizing, Volume.litres(100), twenty, twenty);
        assertThat(measured.window().lowest().si()).isCloseTo(charge * 100 / (100 - held), within(1e-6));
    }

    @Test
    void vesselOfExactlyTheSizeMayBeFilledColdToTheColdPressureWithItsOwnGasTemperatures() {
        GasTemperatures own = new GasTemperatures(
                Temperature.celsius(20), Temperature.celsius(10), Temperature.celsius(30), Source.given());
        Sizing exact =
                Methods.ASHRAE.with(own).size(Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), SIX, THIRTY_FIVE));
        FillPlan plan = FillPlan.of(exact, exact.requiredVolume(), SIX);
        assertThat(plan.highest().si() / exact.coldPressure().si()).isCloseTo(1, within(1e-9));
    }

    @Test
    void solarLoopLeavesRoomForWhatVapourPushesOut() {
        Loop loop = Loop.withContents(Volume.litres(65))
                .rigid()
                .filledWith(TestFluid.MIXTURE)
                .stagnating(new StagnationContents(Volume.litres(30), Volume.litres(10)));
        PressureInputs pressures =
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(2.7)).withFinalPressure(GaugePressure.bar(5.4));
        LoopTemperatures fromMinusTen = LoopTemperatures.between(Temperature.celsius(-10), null);
        Sizing sizing = Methods.IDAE_022.size(new SizingJob(loop, VesselType.bladder(), fromMinusTen, pressures));
        FillPlan plan = FillPlan.of(sizing, Volume.litres(150), Temperature.celsius(20));
        assertThat(plan.expansion().in(Units.LITRE)).isCloseTo(5.525 + 40, within(1e-9));
        assertThat(plan.contraction().in(Units.LITRE)).isCloseTo(65 * 0.015 / 0.995, within(1e-9));
        assertThat(plan.window().isOpen()).isTrue();
        assertThatThrownBy(() -> FillPlan.of(sizing, Volume.litres(150), Temperature.celsius(-20)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("from the loop's lowest -10 degC (14 degF) upwards");
    }
}
