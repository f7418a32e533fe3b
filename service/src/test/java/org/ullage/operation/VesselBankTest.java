package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.vessel;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;

/** Several vessels together, by hand; air at 1 bar. */
class VesselBankTest {

    private static final GaugePressure TWO = GaugePressure.bar(2);

    private static double litres(VesselBank bank, double bar) {
        return bank.water(GaugePressure.bar(bar)).in(Units.LITRE);
    }

    @Test
    void chargesOfTheirOwn() {
        // At 2 bar, 3 bar abs: 60 x (1 - 2/3) = 20 L and 40 x (1 - 2.5/3) = 6.667 L
        VesselBank bank = bank(vessel("A", 60, 1), vessel("B", 40, 1.5));
        assertThat(litres(bank, 2)).isCloseTo(20 + 40 / 6.0, within(1e-9));
        assertThat(litres(bank, 1.2)).isCloseTo(60 * (1 - 2 / 2.2), within(1e-9));
        assertThat(litres(bank, 0.9)).isZero();
        assertThat(bank.shares(TWO).get(1).vessel()).isEqualTo("B");
        assertThat(bank.shares(TWO).get(1).water().in(Units.LITRE)).isCloseTo(40 / 6.0, within(1e-9));
        assertThat(bank.capacity()).isEqualTo(Volume.litres(100));
    }

    @Test
    void levels() {
        // 10 m conventional water is 0.980665 bar; the vessel above sees less, the one below more.
        InstalledVessel roof = vessel("roof", 60, 1).standing(Length.metres(10));
        InstalledVessel cellar = vessel("cellar", 60, 1).standing(Length.metres(-10));
        assertThat(litres(bank(roof), 2)).isCloseTo(60 * (1 - 2 / (3 - 0.980665)), within(1e-9));
        assertThat(litres(bank(cellar), 2)).isCloseTo(60 * (1 - 2 / 3.980665), within(1e-9));
        assertThat(litres(bank(roof, cellar), 1.9)).isCloseTo(60 * (1 - 2 / 3.880665), within(1e-9));
    }

    @Test
    void gasThatIsLostWarmedOrMeasured() {
        InstalledVessel sound = vessel("A", 60, 1);
        // half the gas: as a charge of 1 bar abs
        assertThat(litres(bank(sound.withGasLeft(VolumeFraction.percent(50))), 2))
                .isCloseTo(60 * (1 - 1 / 3.0), within(1e-9));
        // 20 L of gas at 3 bar abs are 60 of the 120 L bar it was charged with
        assertThat(sound.withGas(Volume.litres(20), TWO, InUse.ONE_BAR).gasLeft())
                .isEqualTo(VolumeFraction.percent(50));
        InstalledVessel warm = sound.withGasAt(Temperature.kelvins(300), Temperature.kelvins(330));
        assertThat(litres(bank(warm), 2)).isCloseTo(60 * (1 - 2.2 / 3), within(1e-9));
        assertThat(litres(bank(sound.withGasLeft(VolumeFraction.percent(0))), 2))
                .isCloseTo(60, within(1e-9));
    }

    @Test
    void aMembraneAtItsStop() {
        VesselBank bank = bank(vessel("A", 60, 1).withAcceptanceLimit(Volume.litres(20)));
        assertThat(litres(bank, 1.9)).isCloseTo(60 * (1 - 2 / 2.9), within(1e-9));
        assertThat(litres(bank, 4)).isCloseTo(20, within(1e-9));
        assertThat(bank.gasCompliance(GaugePressure.bar(4), PressureDifference.bar(1)))
                .isEqualTo(Volume.litres(0));
    }

    @Test
    void complianceByHand() {
        VesselBank bank = bank(vessel("A", 60, 1), vessel("B", 40, 1.5), vessel("C", 40, 3));
        // V p_0 / p^2 = 60 x 2/9 + 40 x 2.5/9 L/bar
        assertThat(bank.gasCompliance(TWO, PressureDifference.bar(0.01)).in(Units.LITRE))
                .isCloseTo((120 + 100) / 9.0 * 0.01, within(1e-9));
    }

    /** 10 m up the vessel begins at 2.980665 bar; at 4 bar it sees 3.019335: 60 x 2 / 3.019335^2 L/bar. */
    @Test
    void complianceOfAVesselOnTheRoof() {
        VesselBank roof = bank(vessel("roof", 60, 1).standing(Length.metres(10)));
        PressureDifference little = PressureDifference.bar(0.01);
        assertThat(roof.gasCompliance(GaugePressure.bar(3), little).in(Units.LITRE))
                .isCloseTo(120 / (3.019335 * 3.019335) * 0.01, within(1e-9));
        assertThat(roof.gasCompliance(GaugePressure.bar(1.9), little)).isEqualTo(Volume.litres(0));
    }

    @Test
    void pressureForWaterGoesBack() {
        VesselBank one = bank(vessel("A", 60, 1));
        // 2 / (1 - 20/60) = 3 bar abs
        assertThat(one.pressure(Volume.litres(20)).in(Units.BAR)).isCloseTo(2, within(1e-9));
        VesselBank several = bank(
                vessel("A", 60, 1),
                vessel("B", 40, 1.5).standing(Length.metres(5)),
                vessel("C", 25, 0.5).withAcceptanceLimit(Volume.litres(9)));
        for (double bar : new double[] {0.6, 1.1, 1.9, 2.4, 6}) {
            assertThat(several.pressure(several.water(GaugePressure.bar(bar))).in(Units.BAR))
                    .isCloseTo(bar, within(1e-9));
        }
    }

    @Test
    void whoTakesWaterWhen() {
        VesselBank bank = bank(vessel("B", 40, 1.5), vessel("A", 60, 1).withAcceptanceLimit(Volume.litres(20)));
        assertThat(bank.events()).extracting(VesselEvent::vessel).containsExactly("A", "B", "A");
        assertThat(bank.events().get(2).pressure().in(Units.BAR)).isCloseTo(2, within(1e-9));
        assertThat(bank.events().get(2).water().in(Units.LITRE)).isCloseTo(20 + 40 / 6.0, within(1e-9));
        assertThat(bank.text(UnitSystem.SI)).isEqualTo("""
                        pressure  vessel  event                 water in all vessels
                        1 bar     A       begins to take water  0 L
                        1.5 bar   B       begins to take water  12 L
                        2 bar     A       membrane at its stop  26.67 L
                        """);
        assertThat(bank.text(UnitSystem.IP)).contains("14.5 psi");
    }

    @Test
    void alikeVesselsAreOne() {
        VesselBank two = bank(vessel("A", 30, 1), vessel("B", 30, 1));
        assertThat(two.water(TWO)).isEqualTo(bank(vessel("C", 60, 1)).water(TWO));
        assertThat(two.numbers().isOne()).isTrue();
    }

    @Test
    void theEndsOfWhatAVesselHoldsAreAllowed() {
        InstalledVessel sound = vessel("A", 60, 1);
        assertThat(sound.withAcceptanceLimit(Volume.litres(60)).acceptanceLimit())
                .isEqualTo(Volume.litres(60));
        assertThat(sound.withGas(Volume.litres(0), TWO, InUse.ONE_BAR).gasLeft())
                .isEqualTo(VolumeFraction.percent(0));
        // 120 L bar of gas are 60 L at 2 bar abs
        assertThat(sound.withGas(Volume.litres(60), GaugePressure.bar(1), InUse.ONE_BAR)
                        .gasLeft())
                .isEqualTo(VolumeFraction.percent(100));
    }

    @Test
    void refusals() {
        VesselBank bank = bank(vessel("A", 60, 1), vessel("B", 40, 1));
        refused(() -> bank(), "number of vessels 0");
        refused(() -> bank(vessel("A", 1, 1), vessel("A", 2, 1)), "name of a vessel A");
        refused(() -> vessel(" ", 1, 1), "name of a vessel blank");
        refused(() -> vessel("A", 0, 1), "nominal volume of A 0 L");
        refused(() -> vessel("A", 10, 1).withAcceptanceLimit(Volume.litres(11)), "acceptance limit of A 11 L");
        refused(() -> vessel("A", 10, 1).withAcceptanceLimit(Volume.litres(0)), "acceptance limit of A 0 L");
        assertThatThrownBy(() -> vessel("A", 60, 1).withGas(Volume.litres(50), TWO, InUse.ONE_BAR))
                .hasMessageContaining("what it was charged with, 40 L");
        refused(() -> vessel("A", 10, 1).withGas(Volume.litres(11), TWO, InUse.ONE_BAR), "gas in A 11 L");
        refused(() -> bank.without("X"), "vessel to shut off X is not allowed: it must be one of [A, B]");
        refused(() -> bank.without("A").without("B"), "vessel to shut off B is not allowed: it must be not the only");
        refused(() -> bank.pressure(Volume.litres(100)), "water in the vessels 100 L");
        refused(() -> bank.pressure(Volume.litres(0)), "water in the vessels 0 L");
        VesselBank full = bank(vessel("A", 60, 1).withGasLeft(VolumeFraction.percent(0)));
        refused(() -> full.pressure(Volume.litres(5)), "water in the vessels 5 L");
        refused(() -> bank.water(GaugePressure.bar(-1)), "gauge pressure -1 bar");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(OutOfRangeException.class).hasMessageStartingWith(message);
    }
}
