package org.ullage.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.method.Jobs;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselType;

class VesselByFluidTest {

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));

    @Test
    void eachFluidGetsItsOwnVessel() {
        StretchedFluid more = new StretchedFluid(1.5);
        VesselByFluid comparison = VesselByFluid.of(JOB, Methods.ASHRAE, List.of(TestFluid.WATER, more));
        Sizing water = comparison.rows().get(0).sizing();
        Sizing stretched = comparison.rows().get(1).sizing();
        assertThat(water.requiredVolume()).isEqualTo(Methods.ASHRAE.size(JOB).requiredVolume());
        double gross = 1.5 * (1.04 / 1.005 - 1) - 3 * 11.7e-6 * 70;
        assertThat(stretched.expansionVolume().si()).isCloseTo(gross, within(1e-12));
        assertThat(comparison.table(UnitSystem.SI).get(1).get(4)).isEqualTo("0 L");
        assertThat(comparison.text(UnitSystem.SI)).contains("beyond the first").contains("stretched");
    }

    @Test
    void refusedFluidKeepsItsReason() {
        SizingJob tooHot =
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(199));
        VesselByFluid comparison = VesselByFluid.of(tooHot, Methods.ASHRAE, List.of(TestFluid.WATER));
        assertThat(comparison.rows().get(0).sizing()).isNull();
        assertThat(comparison.table(UnitSystem.SI).get(1).get(5)).contains("boiling");
        assertThat(comparison.text(UnitSystem.SI)).contains("straight line refused: highest temperature 199 degC");
    }
}
