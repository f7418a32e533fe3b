package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.fluids.Water;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;

/**
 * Locked water by IAPWS-IF97 against expansion, compressibility and rigid slope computed with IAPWS-95 at 3 bar absolute.
 *
 * <p>The two formulations agree in specific volume to parts per million, but not as well in its derivatives: at 3 bar between 10 and
 * 120 degC the expansions are up to 0.53e-6 per kelvin apart (40 degC), the compressibilities up to 0.35 % (60 degC, IF97 the lower
 * one). The formula itself is checked to the printed digits in LockedLiquidTest.
 */
class LockedWaterTest {

    private static final double EXPANSION_APART = 0.55e-6;
    private static final double COMPRESSIBILITY_APART = 0.0036;

    @ParameterizedTest
    @CsvSource({
        "10, 88.41, 4.7783, 1.85",
        "20, 207.1, 4.5868, 4.515",
        "40, 385.54, 4.4215, 8.72",
        "50, 457.75, 4.4149, 10.368",
        "60, 523.15, 4.4474, 11.763",
        "80, 641.14, 4.6122, 13.901",
        "90, 696.33, 4.7405, 14.689",
        "100, 750.27, 4.8989, 15.315",
        "110, 803.77, 5.0883, 15.796",
        "120, 857.52, 5.3107, 16.147",
    })
    void waterItself(double celsius, double alphaMillionths, double chi, double slopeBar) {
        LockedLiquid water =
                LockedLiquid.rigid(Water.IAPWS_IF97, Temperature.celsius(celsius), AbsolutePressure.bar(3));
        assertThat(water.expansionSi()).isCloseTo(alphaMillionths * 1e-6, within(EXPANSION_APART));
        assertThat(water.compressibilitySi()).isCloseTo(chi * 1e-10, within(chi * 1e-10 * COMPRESSIBILITY_APART));
        double apart = EXPANSION_APART / (chi * 1e-10) + slopeBar * 1e5 * COMPRESSIBILITY_APART;
        assertThat(water.slopeSi()).isCloseTo(slopeBar * 1e5, within(apart));
    }
}
