package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.DensityExpansion;
import org.ullage.method.HotBasis;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.pressure.PressureInputs;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** What the units and the conventions of a method may not change. */
class MethodInvariancesTest {

    private static final Source TEST = Source.commonPractice("test");

    /** Relative rounding that conversions and the operations of a sizing can add up to. */
    private static final double ROUNDING = 1e-12;

    static List<Method> methods() {
        return Jobs.methods();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void withEqualConventionsItIsTheGasLaw(Method method) {
        Method equal = method.with(HotBasis.HIGHEST_OPERATING)
                .with(new DensityExpansion(TEST))
                .with(PipeCredit.NONE)
                .with(WaterReserve.NONE)
                .with(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.3), TEST))
                .with(FinalPressureRule.below(PressureDifference.bar(0.5), TEST))
                .with(ChargeRule.COLD_PRESSURE)
                .with(new AtmosphereRule(AbsolutePressure.bar(1), TEST));
        Volume required = equal.size(metric(method)).requiredVolume();
        Volume water = Volume.litres(1000 * (1.04 / 1.005 - 1));
        Volume expected = vessel(method).kind() == VesselKind.OPEN
                ? water
                : GasLaw.nominalVolume(
                        water,
                        AbsolutePressure.bar(0.0980665 * 8 + 1.3),
                        AbsolutePressure.bar(0.0980665 * 8 + 1.3),
                        AbsolutePressure.bar(3.5));
        assertThat(required.dividedBy(expected)).isCloseTo(1, within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void inchPoundInputsGiveTheSameVessel(Method method) {
        SizingJob metric = metric(method);
        Loop loop =
                Loop.withContents(Volume.gallons(1000 / 3.785411784)).steel().filledWith(TestFluid.WATER);
        PressureInputs pressures = PressureInputs.NONE
                .withStaticHead(Length.feet(8 / 0.3048))
                .withReliefSetting(GaugePressure.psi(3 / 0.0689475729316836));
        LoopTemperatures temperatures =
                LoopTemperatures.between(Temperature.fahrenheit(50), Temperature.fahrenheit(176));
        SizingJob inchPound = new SizingJob(loop, vessel(method), temperatures, pressures);
        assertThat(method.size(inchPound)
                        .requiredVolume()
                        .dividedBy(method.size(metric).requiredVolume()))
                .isCloseTo(1, within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void absolutePressuresAreGaugePressuresAboveTheSitesAir(Method method) {
        AbsolutePressure air = AbsolutePressure.bar(0.9);
        PressureInputs gauge = PressureInputs.NONE
                .withAtmosphere(air)
                .withColdPressure(GaugePressure.bar(0.8))
                .withFinalPressure(GaugePressure.bar(2.4));
        PressureInputs absolute = PressureInputs.NONE
                .withAtmosphere(air)
                .withColdPressure(GaugePressure.parse("1.7 bar abs", air))
                .withFinalPressure(GaugePressure.parse("3.3 bar abs", air));
        Volume one = method.size(Jobs.with(metric(method), gauge)).requiredVolume();
        Volume other = method.size(Jobs.with(metric(method), absolute)).requiredVolume();
        assertThat(other.dividedBy(one)).isCloseTo(1, within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void aMethodSurvivesSerialization(Method method) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(method);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Method copy = (Method) in.readObject();
            Sizing sizing = copy.size(metric(method));
            assertThat(sizing.requiredVolume())
                    .isEqualTo(method.size(metric(method)).requiredVolume());
            assertThat(sizing.warnings()).isEqualTo(method.size(metric(method)).warnings());
        }
    }

    private static SizingJob metric(Method method) {
        PressureInputs pressures =
                PressureInputs.NONE.withStaticHead(Length.metres(8)).withReliefSetting(GaugePressure.bar(3));
        LoopTemperatures temperatures = LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(80));
        return new SizingJob(Jobs.loop(TestFluid.WATER), vessel(method), temperatures, pressures);
    }

    private static VesselType vessel(Method method) {
        return method.kinds().contains(VesselKind.BLADDER) ? VesselType.bladder() : VesselType.open();
    }
}
