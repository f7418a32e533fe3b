package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

class ChargeCorrectionTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;

    /** (12 + 14.696) psi x 479.67 R / 529.67 R - 14.696 psi = 9.480 psi. */
    @Example
    void aColdDay() {
        GaugePressure cold =
                ChargeCorrection.at(GaugePressure.psi(12), Temperature.fahrenheit(70), Temperature.fahrenheit(20), AIR);
        assertThat(cold.in(Units.PSI)).isCloseTo(9.480, within(5e-4));
    }

    @Property
    void thereAndBack(
            @ForAll @DoubleRange(min = 0, max = 6) double bar,
            @ForAll @DoubleRange(min = -20, max = 60) double from,
            @ForAll @DoubleRange(min = -20, max = 60) double to) {
        GaugePressure charge = GaugePressure.bar(bar);
        Temperature read = Temperature.celsius(from);
        Temperature wanted = Temperature.celsius(to);
        GaugePressure there = ChargeCorrection.at(charge, read, wanted, AIR);
        assertThat(ChargeCorrection.at(there, wanted, read, AIR).si()).isCloseTo(charge.si(), within(1e-6));
        assertThat(Math.signum(there.si() - charge.si()) * Math.signum(to - from) + 0.0)
                .isNotNegative();
    }
}
