package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.loop.Contents;
import org.ullage.loop.EmitterType;
import org.ullage.loop.QuickEstimate;
import org.ullage.published.Methods;
import org.ullage.quantity.Power;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselType;

class VesselRangeTest {

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));

    @Test
    void estimateCarriesItsRangeToTheVesselAndTheUpperEndIsRecommended() {
        Contents contents = QuickEstimate.of(Power.kilowatts(24), EmitterType.STEEL_PANEL_RADIATORS)
                .contents();
        VesselRange range = VesselRange.of(JOB, Methods.ASHRAE, contents);
        assertThat(range.low().requiredVolume()).isLessThan(range.typical().requiredVolume());
        assertThat(range.recommended()).isSameAs(range.high());
        // without a reserve the vessel is proportional to the contents
        double ratio = contents.high().dividedBy(contents.low());
        assertThat(range.high().requiredVolume().dividedBy(range.low().requiredVolume()))
                .isCloseTo(ratio, within(ratio * 1e-12));
        assertThat(range.text(UnitSystem.SI)).startsWith("required volume ").contains("; take ");
    }
}
