package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.TestFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class PreCoolingVesselTest {

    private static final AbsolutePressure PRESSURE = AbsolutePressure.bar(3);

    @Test
    void takesTheExpansionBeyondSeventyDegrees() {
        // (1 + 0.0005 x 110)/(1 + 0.0005 x 70) - 1
        double litres = 1000 * (1.055 / 1.035 - 1);
        Temperature hot = Temperature.celsius(110);
        assertThat(PreCoolingVessel.forAllOf(Jobs.loop(TestFluid.WATER), hot, PRESSURE)
                        .in(Units.LITRE))
                .isCloseTo(litres, within(1e-9));
        assertThat(PreCoolingVessel.forHalfOf(Jobs.loop(TestFluid.WATER), hot, PRESSURE)
                        .in(Units.LITRE))
                .isCloseTo(litres / 2, within(1e-9));
    }

    @Test
    void isNotNeededUpToTheLimitOfTheMembrane() {
        assertThat(PreCoolingVessel.forAllOf(Jobs.loop(TestFluid.WATER), PreCoolingVessel.MEMBRANE_LIMIT, PRESSURE))
                .isEqualTo(Volume.litres(0));
    }

    @Test
    void isHalfOfWhatTheVesselBehindTakes() {
        assertThat(PreCoolingVessel.before(Volume.litres(48)).in(Units.LITRE)).isCloseTo(24, within(1e-9));
        assertThat(PreCoolingVessel.CAUTIONS).anyMatch(caution -> caution.text().contains("Never insulate"));
    }
}
