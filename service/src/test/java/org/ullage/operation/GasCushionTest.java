package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ullage.operation.InUse.bank;
import static org.ullage.operation.InUse.loop;
import static org.ullage.operation.InUse.reading;
import static org.ullage.operation.InUse.vessel;

import org.junit.jupiter.api.Test;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/** Boyle's law between two readings, by hand. */
class GasCushionTest {

    private static final OperatingCurve CURVE = loop(
                    625, PipeMaterial.RIGID, TestFluid.WATER, bank(vessel("V", 100, 0.5)), reading(1, 0))
            .curve();

    @Test
    void byHand() {
        assertThat(GasCushion.pressure(75, 2, 25)).isEqualTo(3);
        assertThat(GasCushion.gas(25, 2, 3)).isCloseTo(75, within(1e-12));
        assertThat(GasCushion.gasOf(100, 1.5, 2)).isEqualTo(75);
        assertThat(GasCushion.gasOf(100, 1.5, 1)).isEqualTo(100);
    }

    @Test
    void gasThatExplainsAReading() {
        // 25 L come in between 0 and 80 degC and raise 2 to 5 bar abs: 25 / (1 - 2/5) = 41.67 L instead of 75 L
        assertThat(GasCushion.explaining(CURVE, reading(4, 80)).in(Units.LITRE)).isCloseTo(25 / 0.6, within(1e-9));
    }

    @Test
    void aPressureThatDoesNotFollow() {
        assertThatThrownBy(() -> GasCushion.explaining(CURVE, reading(0.8, 80)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("second reading 0.8 bar");
        assertThatThrownBy(() -> GasCushion.explaining(CURVE, reading(1, 80))).isInstanceOf(OutOfRangeException.class);
    }
}
