package org.ullage.comparison;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselType;

class ConventionSharesTest {

    @Test
    void aSecondMethodWithoutOpenTanksIsRefusedAsItRefusesTheJob() {
        SizingJob open =
                Jobs.steel(TestFluid.WATER, VesselType.open(), Temperature.celsius(10), Temperature.celsius(80));
        assertThatThrownBy(() -> ConventionShares.between(open, Methods.PRACTICE_HU_OPEN, Methods.BS_7074))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("vessel kind open");
    }
}
