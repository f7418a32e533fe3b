package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.pressure.StandardAtmosphere;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class ChargeReadingTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final Temperature TWENTY = Temperature.celsius(20);

    /**
     * How much higher the gauge of a vessel sealed at sea level reads when it is carried up, same temperature: altitude in m, shift in
     * bar. Computed from p = 101325 (1 - 2.25577e-5 h)^5.25588 (ISO 2533, from memory).
     */
    private static final double[][] CARRIED_UP = {
        {0, 0},
        {250, 0.0297},
        {500, 0.0586},
        {750, 0.0869},
        {1000, 0.1145},
        {2000, 0.2183},
        {3000, 0.3122},
    };

    @Example
    void aSealedVesselReadsMoreWhereTheAirIsThinner() {
        ChargeReading low = new ChargeReading(GaugePressure.bar(1), TWENTY, AIR);
        for (double[] row : CARRIED_UP) {
            ChargeReading high = low.under(StandardAtmosphere.at(Length.metres(row[0])));
            assertThat(high.pressure().minus(low.pressure()).in(Units.BAR))
                    .as("%s m", row[0])
                    .isCloseTo(row[1], within(0.0001));
            assertThat(high.absolute().si()).isCloseTo(low.absolute().si(), within(1e-6));
        }
    }

    @Property
    void thereAndBackIsTheSame(
            @ForAll @DoubleRange(min = 0, max = 10) double bar,
            @ForAll @DoubleRange(min = -30, max = 90) double celsius,
            @ForAll @DoubleRange(min = 0.6, max = 1.1) double air) {
        ChargeReading set = new ChargeReading(GaugePressure.bar(bar), TWENTY, AIR);
        ChargeReading back = set.at(Temperature.celsius(celsius))
                .under(AbsolutePressure.bar(air))
                .at(TWENTY)
                .under(AIR);
        assertThat(back.pressure().si()).isCloseTo(set.pressure().si(), within(1e-6));
    }

    @Property
    void theOrderOfTemperatureAndAirDoesNotMatter(
            @ForAll @DoubleRange(min = -30, max = 90) double celsius,
            @ForAll @DoubleRange(min = 0.6, max = 1.1) double air) {
        ChargeReading set = new ChargeReading(GaugePressure.psi(12), TWENTY, AIR);
        Temperature gas = Temperature.celsius(celsius);
        AbsolutePressure there = AbsolutePressure.bar(air);
        PressureDifference apart = set.at(gas)
                .under(there)
                .pressure()
                .minus(set.under(there).at(gas).pressure());
        assertThat(apart.si()).isCloseTo(0, within(1e-6));
    }

    @Example
    void vacuumIsNoCharge() {
        assertThatThrownBy(() -> new ChargeReading(GaugePressure.bar(-1.1), TWENTY, AIR))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above vacuum");
    }

    @Example
    void textHasPressureAndTemperature() {
        assertThat(new ChargeReading(GaugePressure.psi(12), Temperature.fahrenheit(68), AIR).text(UnitSystem.IP))
                .isEqualTo("12 psi with the gas at 68 degF");
    }
}
