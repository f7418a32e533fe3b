package org.ullage.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;

class FillWindowTest {

    private static final AbsolutePressure CHARGE = AbsolutePressure.bar(2.2);
    private static final AbsolutePressure LAST = AbsolutePressure.bar(3.5);

    @Example
    void lowestKeepsTheReserveAndHighestTakesTheExpansion() {
        Volume nominal = Volume.litres(100);
        FillWindow window = FillWindow.of(nominal, CHARGE, LAST, Volume.litres(5), Volume.litres(28));
        assertThat(GasLaw.waterInVessel(nominal, CHARGE, window.lowest()).si()).isCloseTo(0.005, within(1e-12));
        assertThat(GasLaw.finalPressure(nominal, Volume.litres(28), CHARGE, window.highest())
                        .si())
                .isCloseTo(LAST.si(), within(1e-6));
    }

    @Property
    void windowIsOpenExactlyWhenTheVesselIsLargeEnough(
            @ForAll @DoubleRange(min = 1, max = 10) double reserve,
            @ForAll @DoubleRange(min = 1, max = 50) double expansion,
            @ForAll @DoubleRange(min = 0.5, max = 2) double share) {
        // V_n = (V_e + V_wr) p_f / (p_f - p_0) is the size at which the window closes to one pressure
        double enough = (reserve + expansion) * 3.5 / (3.5 - 2.2);
        Volume nominal = Volume.litres(enough * share);
        if (nominal.si() <= Volume.litres(reserve).si() || Math.abs(share - 1) < 1e-9) {
            return;
        }
        FillWindow window = FillWindow.of(nominal, CHARGE, LAST, Volume.litres(reserve), Volume.litres(expansion));
        assertThat(window.isOpen()).isEqualTo(share > 1);
    }

    @Example
    void warmerGasWhenHotLowersTheHighestPressure() {
        // charge 2.2 bar abs at the filling, 2.4 when hot; 100 L: 100 x 2.2 / (100 x 2.4 / 3.5 + 20) = 220 / 88.571
        AbsolutePressure hot = AbsolutePressure.bar(2.4);
        FillWindow window = FillWindow.of(Volume.litres(100), CHARGE, hot, LAST, Volume.litres(5), Volume.litres(20));
        assertThat(window.highest().si()).isCloseTo(220e5 / (240 / 3.5 + 20), within(1e-6));
        assertThat(window.lowest().si()).isCloseTo(2.2e5 / 0.95, within(1e-6));
    }

    @Example
    void impossibleWindowsAreRefused() {
        assertThatThrownBy(() -> FillWindow.of(Volume.litres(10), CHARGE, LAST, Volume.litres(10), Volume.litres(1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("water to hold in the vessel 10 L")
                .hasMessageContaining("larger vessel");
        assertThatThrownBy(() -> FillWindow.of(Volume.litres(10), CHARGE, LAST, Volume.litres(1), Volume.litres(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("expansion to come -1 L");
        assertThatThrownBy(() -> FillWindow.of(Volume.litres(10), LAST, CHARGE, Volume.litres(1), Volume.litres(1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("final pressure");
    }

    @Example
    void oneSinglePressureIsStillAWindow() {
        assertThat(new FillWindow(CHARGE, CHARGE).isOpen()).isTrue();
    }
}
