package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.ullage.loop.Loop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.VesselPlace;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;
import org.ullage.workings.Caution;

/** The table answers for its own state, never silently for another: 195 degF, 12 psig, 30 psig. */
class IrcM2003MethodTest {

    private static final double SHARE = 0.00041 * 195 - 0.0466;

    @Test
    void needsTheContentsAlone() {
        assertThat(gallons(VesselType.plainSteel(), PressureInputs.NONE))
                .isCloseTo(60 * SHARE / (14.7 / 26.7 - 14.7 / 44.7), within(1e-9));
        assertThat(gallons(VesselType.bladder(), PressureInputs.NONE))
                .isCloseTo(60 * SHARE / (1 - 26.7 / 44.7), within(1e-9));
        assertThat(warnings(60, null, PressureInputs.NONE)).hasSize(1).allMatch(text -> text.contains("remembered"));
    }

    @Test
    void givenStateOfTheTableChangesNothing() {
        PressureInputs basis =
                PressureInputs.NONE.withColdPressure(GaugePressure.psi(12)).withFinalPressure(GaugePressure.psi(30));
        assertThat(warnings(60, Temperature.fahrenheit(195), basis)).hasSize(1);
        // written in metric units, rounded
        PressureInputs metric = PressureInputs.NONE
                .withColdPressure(GaugePressure.bar(0.83))
                .withReliefSetting(GaugePressure.bar(2.07));
        assertThat(warnings(60, Temperature.celsius(90.6), metric)).hasSize(1);
        assertThat(gallons(VesselType.bladder(), metric)).isEqualTo(gallons(VesselType.bladder(), PressureInputs.NONE));
    }

    @Test
    void harderLoopIsRefused() {
        assertThatThrownBy(() -> warnings(60, Temperature.fahrenheit(200), PressureInputs.NONE))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("200 degF");
        refused("cold pressure", PressureInputs.NONE.withColdPressure(GaugePressure.psi(15)));
        refused("cold pressure", PressureInputs.NONE.withStaticHead(Length.feet(30)));
        refused("final pressure", PressureInputs.NONE.withFinalPressure(GaugePressure.psi(27)));
        refused("final pressure", PressureInputs.NONE.withReliefSetting(GaugePressure.psi(25)));
        refused(
                "final pressure",
                PressureInputs.NONE
                        .withReliefSetting(GaugePressure.psi(30))
                        .withPlace(VesselPlace.AT_VALVE.withPumpAtValve(PressureDifference.psi(3))));
    }

    private static void refused(String quantity, PressureInputs pressures) {
        assertThatThrownBy(() -> gallons(VesselType.bladder(), pressures))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(quantity)
                .hasMessageContaining("IRC table M2003.2");
    }

    @Test
    void easierLoopGetsTheTablesAnswerWithAWarning() {
        PressureInputs easier =
                PressureInputs.NONE.withColdPressure(GaugePressure.psi(10)).withReliefSetting(GaugePressure.psi(45));
        assertThat(gallons(VesselType.bladder(), easier)).isEqualTo(gallons(VesselType.bladder(), PressureInputs.NONE));
        assertThat(warnings(60, Temperature.fahrenheit(180), easier))
                .anyMatch(text -> text.contains("195 degF"))
                .anyMatch(text -> text.contains("cold pressure of 0.8274 bar (12 psi)"))
                .anyMatch(text -> text.contains("final pressure of 2.068 bar (30 psi)"));
        assertThat(warnings(60, null, PressureInputs.NONE.withStaticHead(Length.feet(20))))
                .hasSize(1);
    }

    @Test
    void moreThanAHundredGallonsIsBeyondTheTable() {
        assertThat(warnings(101, null, PressureInputs.NONE)).anyMatch(text -> text.contains("100 gal"));
        assertThat(warnings(100, null, PressureInputs.NONE)).noneMatch(text -> text.contains("100 gal"));
    }

    @Test
    void workingsShowTheStateOfTheTable() {
        String text = Methods.IRC_M2003
                .size(job(60, null, VesselType.bladder(), PressureInputs.NONE))
                .workings()
                .text(UnitSystem.IP);
        assertThat(text).contains("12 psi + 14.7 psi abs", "30 psi + 14.7 psi abs", "= 0.03335", "the rule's number");
        assertThat(Methods.IRC_M2003.toString()).contains("0.03335 whatever the temperature", "12 psi (0.8274 bar)");
    }

    private static double gallons(VesselType vessel, PressureInputs pressures) {
        return Methods.IRC_M2003
                .size(job(60, null, vessel, pressures))
                .requiredVolume()
                .in(Units.US_GALLON);
    }

    private static List<String> warnings(double gallons, @Nullable Temperature hot, PressureInputs pressures) {
        return Methods.IRC_M2003.size(job(gallons, hot, VesselType.bladder(), pressures)).warnings().stream()
                .map(Caution::text)
                .toList();
    }

    private static SizingJob job(
            double gallons, @Nullable Temperature hot, VesselType vessel, PressureInputs pressures) {
        Loop loop = Loop.withContents(Volume.gallons(gallons)).steel().filledWith(TestFluid.WATER);
        return new SizingJob(loop, vessel, LoopTemperatures.between(null, hot), pressures);
    }
}
