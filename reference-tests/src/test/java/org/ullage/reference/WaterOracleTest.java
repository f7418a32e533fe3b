package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ullage.fluids.Iapws97;
import org.ullage.fluids.Water;

/**
 * Water against an independent implementation of the same release, com.hummeling:if97 1.0.5, on random states of region 1 drawn
 * with a fixed seed.
 */
class WaterOracleTest {

    private static final int STATES = 20_000;
    private static final long SEED = 19_970_904L;

    private static final IF97 ORACLE = new IF97(IF97.UnitSystem.SI);

    /** Relative. Both evaluate the same sums in doubles; only the rounding of the powers differs. */
    private static final double ROUNDING = 1e-12;

    /** J/kg: the same of 100 kJ/kg. Enthalpy passes zero near 0 degC, where a relative tolerance would ask the impossible. */
    private static final double ENTHALPY_ROUNDING = 1e-7;

    /** Relative. The terms of the second derivative are larger than their sum, so that a digit is lost to cancellation. */
    private static final double HEAT_CAPACITY_ROUNDING = 1e-11;

    /** Relative. Differences of nearly equal numbers under the square roots cost two or three of the sixteen digits. */
    private static final double SATURATION_ROUNDING = 1e-12;

    @Test
    void region1() throws OutOfRangeException {
        Random random = new Random(SEED);
        for (int i = 0; i < STATES; i++) {
            double kelvins = between(random, 273.16, 623.14);
            double pascals = between(random, Iapws97.saturationPressure(kelvins) * 1.000_001, 99.999e6);
            assertAgrees(kelvins, pascals);
        }
    }

    @Test
    void region1WhereLoopsWork() throws OutOfRangeException {
        Random random = new Random(SEED);
        for (int i = 0; i < STATES; i++) {
            assertAgrees(between(random, 273.16, 393.15), between(random, 2e5, 2e6));
        }
    }

    @Test
    void saturationLine() throws OutOfRangeException {
        Random random = new Random(SEED);
        for (int i = 0; i < STATES; i++) {
            double kelvins = between(random, 273.16, 647.09);
            double pascals = ORACLE.saturationPressureT(kelvins);
            assertThat(Iapws97.saturationPressure(kelvins)).isCloseTo(pascals, within(SATURATION_ROUNDING * pascals));
            double back = ORACLE.saturationTemperatureP(pascals);
            assertThat(Iapws97.saturationTemperature(pascals)).isCloseTo(back, within(SATURATION_ROUNDING * back));
        }
    }

    private static void assertAgrees(double kelvins, double pascals) throws OutOfRangeException {
        double volume = ORACLE.specificVolumePT(pascals, kelvins);
        assertThat(Water.IAPWS_IF97.specificVolumeSi(kelvins, pascals)).isCloseTo(volume, within(ROUNDING * volume));
        double enthalpy = ORACLE.specificEnthalpyPT(pascals, kelvins);
        assertThat(Iapws97.specificEnthalpy(kelvins, pascals)).isCloseTo(enthalpy, within(ENTHALPY_ROUNDING));
        double heatCapacity = ORACLE.isobaricHeatCapacityPT(pascals, kelvins);
        assertThat(Iapws97.specificHeatCapacity(kelvins, pascals))
                .isCloseTo(heatCapacity, within(HEAT_CAPACITY_ROUNDING * heatCapacity));
    }

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }
}
