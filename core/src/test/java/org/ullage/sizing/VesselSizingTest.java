package org.ullage.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.loop.Loop;
import org.ullage.method.Sizing;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselKind;
import org.ullage.vessel.VesselType;

class VesselSizingTest {

    private static final VesselSizing.VesselStep LOOP = VesselSizing.forLoop(
                    Loop.withContents(Volume.litres(1200)).steel().filledWith(TestFluid.WATER))
            .between(Temperature.celsius(10), Temperature.celsius(82));

    @Test
    void everyStepReachesTheJob() {
        Sizing sizing = LOOP.vessel(VesselType.bladder())
                .coldPressure(GaugePressure.bar(1.2))
                .finalPressure(GaugePressure.bar(2.6))
                .atmosphere(AbsolutePressure.kilopascals(95))
                .preCharge(GaugePressure.bar(1.1))
                .by(Methods.ASHRAE)
                .size();
        assertThat(sizing.coldPressure()).isEqualTo(GaugePressure.bar(1.2));
        assertThat(sizing.finalPressure()).isEqualTo(GaugePressure.bar(2.6));
        assertThat(sizing.atmosphere()).isEqualTo(AbsolutePressure.kilopascals(95));
        assertThat(sizing.preCharge().si()).isEqualTo(110_000);
        assertThat(sizing.method()).isSameAs(Methods.ASHRAE);
        assertThat(sizing.cautions()).isNotEmpty();
    }

    @Test
    void headAndReliefValveReachTheJob() {
        Sizing sizing = LOOP.vessel(VesselType.bladder())
                .staticHead(Length.metres(9))
                .reliefValve(GaugePressure.bar(3))
                .by(Methods.EN_12828)
                .size();
        assertThat(sizing.job().pressures().staticHead()).isEqualTo(Length.metres(9));
        assertThat(sizing.job().pressures().reliefSetting()).isEqualTo(GaugePressure.bar(3));
        assertThat(sizing.finalPressure()).isEqualTo(GaugePressure.bar(2.5));
    }

    @Test
    void openTankNeedsNoPressures() {
        Sizing sizing = LOOP.openTank().by(Methods.ASHRAE).size();
        assertThat(sizing.job().vessel().kind()).isEqualTo(VesselKind.OPEN);
        assertThat(sizing.requiredVolume()).isGreaterThan(sizing.expansionVolume());
    }

    @Test
    void jobCanBePutToSeveralMethods() {
        var job = LOOP.vessel(VesselType.bladder())
                .staticHead(Length.metres(9))
                .reliefValve(GaugePressure.bar(3))
                .job();
        assertThat(Methods.ASHRAE.size(job).requiredVolume())
                .isLessThan(Methods.EN_12828.size(job).requiredVolume());
    }
}
