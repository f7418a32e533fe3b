package org.ullage.pressure;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
}
