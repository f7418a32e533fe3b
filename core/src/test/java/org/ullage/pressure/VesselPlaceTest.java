package org.ullage.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;

class VesselPlaceTest {

    private static final Length ENDLESS = Length.metres(1e305);

    @Test
    void aHeightWithoutAFiniteStaticHeadIsRefused() {
        assertThatThrownBy(VesselPlace.AT_VALVE.withValveAbove(ENDLESS)::valveToVesselPascals)
                .isInstanceOf(OutOfRangeException.class);
        VesselPlace.WeakestPart part =
                new VesselPlace.WeakestPart(GaugePressure.bar(6), ENDLESS, PressureDifference.bar(0));
        assertThatThrownBy(part::vesselPascals).isInstanceOf(OutOfRangeException.class);
    }

    /** The column between vessel and part: 10 m of water are 0.980665 bar. */
    @Test
    void partAboveTheVesselSeesLessAndPartBelowSeesMore() {
        assertThat(part(10, 0).vesselPascals()).isCloseTo(300_000 + 98_066.5, within(1e-6));
        assertThat(part(-10, 0).vesselPascals()).isCloseTo(300_000 - 98_066.5, within(1e-6));
    }

    @Test
    void pumpCountsOnlyWhereItAddsAsItAlsoStandsStill() {
        assertThat(part(0, 0.4).vesselPascals()).isCloseTo(260_000, within(1e-6));
        assertThat(part(0, -0.4).vesselPascals()).isCloseTo(300_000, within(1e-6));
    }

    @Test
    void settingOfAValveAboveTheVesselIsMoreAtTheVessel() {
        VesselPlace place = VesselPlace.AT_VALVE.withValveAbove(Length.metres(10));
        assertThat(place.valveToVesselPascals()).isCloseTo(98_066.5, within(1e-6));
        assertThat(place.withPumpAtValve(PressureDifference.bar(0.4)).valveToVesselPascals())
                .isCloseTo(58_066.5, within(1e-6));
    }

    @Test
    void onlyAPumpThatTakesPressureAwayAtTheTopRaisesTheColdPressure() {
        assertThat(VesselPlace.AT_VALVE
                        .withPumpAtTop(PressureDifference.bar(-0.2))
                        .coldRaisePascals())
                .isCloseTo(20_000, within(1e-9));
        assertThat(VesselPlace.AT_VALVE
                        .withPumpAtTop(PressureDifference.bar(0.2))
                        .coldRaisePascals())
                .isZero();
    }

    private static VesselPlace.WeakestPart part(double metresAbove, double pumpBar) {
        return new VesselPlace.WeakestPart(
                GaugePressure.bar(3), Length.metres(metresAbove), PressureDifference.bar(pumpBar));
    }
}
