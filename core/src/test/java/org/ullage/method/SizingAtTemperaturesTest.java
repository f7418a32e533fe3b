package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.pressure.PressureInputs;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

/** The quick way must say what the method itself says, or hold its tongue. */
class SizingAtTemperaturesTest {

    @Provide
    Arbitrary<Method> methods() {
        return Arbitraries.of(Jobs.methods()).filter(method -> method.kinds().contains(VesselKind.BLADDER));
    }

    @Provide
    Arbitrary<VesselType> vessels() {
        return Arbitraries.of(
                VesselType.bladder(), VesselType.diaphragm(), VesselType.diaphragm(VolumeFraction.percent(35)));
    }

    @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE)
    void agreesWithTheMethodWhereItAnswers(
            @ForAll("methods") Method method,
            @ForAll("vessels") VesselType vessel,
            @ForAll boolean coldIsStated,
            @ForAll boolean finalIsStated,
            @ForAll boolean chargeIsStated,
            @ForAll @DoubleRange(min = 5, max = 5000) double litres,
            @ForAll @DoubleRange(min = -1, max = 30) double head,
            @ForAll @DoubleRange(min = 0.2, max = 5) double last,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double aside) {
        PressureInputs start = pressures(coldIsStated, finalIsStated, chargeIsStated, 8, 3, 0.1);
        SizingAtTemperatures quick;
        try {
            quick = SizingAtTemperatures.of(method, job(vessel, 1000, start));
        } catch (OutOfRangeException refused) {
            Assume.that(false);
            return;
        }
        PressureInputs given = pressures(coldIsStated, finalIsStated, chargeIsStated, head, last, aside);
        double volume = quick.cubicMetres(
                litres / 1000,
                si(given.staticHead()),
                si(given.coldPressure()),
                si(given.preCharge()),
                si(given.finalPressure()),
                si(given.reliefSetting()));
        try {
            double whole =
                    method.size(job(vessel, litres, given)).requiredVolume().si();
            boolean isTable = method.coldPressure().fixed() != null;
            if (isTable) {
                assertThat(volume).isNaN();
            } else {
                assertThat(volume).isCloseTo(whole, within(whole * 1e-12));
            }
        } catch (OutOfRangeException refused) {
            assertThat(volume).isNaN();
        }
    }

    @Property
    void atItsOwnStartItIsTheMethodToTheLastBit(@ForAll("methods") Method method) {
        PressureInputs start = pressures(false, false, false, 8, 3, 0);
        SizingJob job = job(VesselType.bladder(), 1234.5, start);
        Assume.that(method.coldPressure().fixed() == null);
        SizingAtTemperatures quick = SizingAtTemperatures.of(method, job);
        assertThat(quick.cubicMetres(
                        1.2345, si(start.staticHead()), Double.NaN, Double.NaN, Double.NaN, si(start.reliefSetting())))
                .isEqualTo(method.size(job).requiredVolume().si());
    }

    @Example
    void openTanksAreRefused() {
        assertThatThrownBy(() ->
                        SizingAtTemperatures.of(Jobs.methods().get(0), job(VesselType.open(), 100, Jobs.HOUSE_BLOCK)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("closed vessel");
    }

    private static double si(@Nullable Quantity<?, ?> quantity) {
        return quantity == null ? Double.NaN : quantity.si();
    }

    private static PressureInputs pressures(
            boolean coldIsStated,
            boolean finalIsStated,
            boolean chargeIsStated,
            double head,
            double last,
            double below) {
        GaugePressure cold = GaugePressure.bar(head / 10 + 0.3);
        PressureInputs pressures = PressureInputs.NONE.withReliefSetting(GaugePressure.bar(last));
        pressures = coldIsStated ? pressures.withColdPressure(cold) : pressures.withStaticHead(Length.metres(head));
        if (finalIsStated) {
            pressures = pressures.withFinalPressure(GaugePressure.bar(last - below));
        }
        return chargeIsStated ? pressures.withPreCharge(GaugePressure.bar(head / 10 + 0.3 - below)) : pressures;
    }

    private static SizingJob job(VesselType vessel, double litres, PressureInputs pressures) {
        return new SizingJob(
                Loop.withContents(Volume.litres(litres)).steel().filledWith(TestFluid.WATER),
                vessel,
                LoopTemperatures.between(Temperature.celsius(10), Temperature.celsius(80)),
                pressures);
    }
}
