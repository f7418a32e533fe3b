package org.ullage.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.VolumeFraction;

class VesselTypeTest {

    @Test
    void diaphragmKeepsItsLimit() {
        VolumeFraction limit = VolumeFraction.percent(45);
        assertThat(VesselType.diaphragm(limit).acceptanceLimit()).isEqualTo(limit);
    }

    @Test
    void diaphragmWithoutDataHasNoLimitRatherThanAGuess() {
        assertThat(VesselType.diaphragm().acceptanceLimit()).isNull();
        assertThat(VesselType.of(VesselKind.DIAPHRAGM)).isEqualTo(VesselType.diaphragm());
    }

    @ParameterizedTest
    @EnumSource(names = "DIAPHRAGM", mode = EnumSource.Mode.EXCLUDE)
    void othersAcceptTheirWholeShell(VesselKind kind) {
        assertThat(VesselType.of(kind).acceptanceLimit()).isEqualTo(VolumeFraction.percent(100));
    }

    @Test
    void zeroLimitIsRefused() {
        assertThatThrownBy(() -> VesselType.diaphragm(VolumeFraction.percent(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("acceptance limit 0 vol%")
                .hasMessageContaining("data plate");
    }
}
