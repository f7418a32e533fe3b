package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Unit;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class ChargeAtTemperatureTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final Temperature TWENTY = Temperature.celsius(20);
    private static final Map<String, Unit<Pressure>> UNITS = Map.of("bar", Units.BAR, "psi", Units.PSI);

    /**
     * Gauge reading of an isolated dry vessel charged at 20 degC at sea level, computed from p_2 = (p_1 + p_a) T_2/T_1 - p_a and rounded
     * to 0.001 and 0.1 %.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    bar, 0.5, -10, 14, 0.345, -0.155, -31
                    bar, 0.5, 0, 32, 0.397, -0.103, -20.6
                    bar, 0.5, 10, 50, 0.448, -0.052, -10.3
                    bar, 0.5, 30, 86, 0.552, 0.052, 10.3
                    bar, 0.5, 50, 122, 0.655, 0.155, 31
                    bar, 0.5, 60, 140, 0.706, 0.206, 41.3
                    bar, 0.5, 70, 158, 0.758, 0.258, 51.6
                    bar, 1, -10, 14, 0.794, -0.206, -20.6
                    bar, 1, 0, 32, 0.863, -0.137, -13.7
                    bar, 1, 10, 50, 0.931, -0.069, -6.9
                    bar, 1, 30, 86, 1.069, 0.069, 6.9
                    bar, 1, 40, 104, 1.137, 0.137, 13.7
                    bar, 1, 50, 122, 1.206, 0.206, 20.6
                    bar, 1, 60, 140, 1.275, 0.275, 27.5
                    bar, 1, 70, 158, 1.343, 0.343, 34.3
                    bar, 1.5, 0, 32, 1.329, -0.171, -11.4
                    bar, 1.5, 10, 50, 1.414, -0.086, -5.7
                    bar, 1.5, 20, 68, 1.5, 0, 0
                    bar, 1.5, 40, 104, 1.671, 0.171, 11.4
                    bar, 1.5, 50, 122, 1.757, 0.257, 17.1
                    bar, 1.5, 70, 158, 1.929, 0.429, 28.6
                    bar, 3, 10, 50, 2.863, -0.137, -4.6
                    bar, 3, 20, 68, 3, 0, 0
                    bar, 3, 40, 104, 3.274, 0.274, 9.1
                    bar, 3, 50, 122, 3.411, 0.411, 13.7
                    bar, 3, 60, 140, 3.548, 0.548, 18.3
                    psi, 12, -10, 14, 9.268, -2.732, -22.8
                    psi, 12, 0, 32, 10.179, -1.821, -15.2
                    psi, 12, 10, 50, 11.089, -0.911, -7.6
                    psi, 12, 20, 68, 12, 0, 0
                    psi, 12, 30, 86, 12.911, 0.911, 7.6
                    psi, 12, 40, 104, 13.821, 1.821, 15.2
                    psi, 12, 50, 122, 14.732, 2.732, 22.8
                    psi, 12, 60, 140, 15.643, 3.643, 30.4
                    psi, 12, 70, 158, 16.553, 4.553, 37.9
                    psi, 20, -10, 14, 16.449, -3.551, -17.8
                    psi, 20, 0, 32, 17.633, -2.367, -11.8
                    psi, 20, 10, 50, 18.816, -1.184, -5.9
                    psi, 20, 20, 68, 20, 0, 0
                    psi, 20, 40, 104, 22.367, 2.367, 11.8
                    psi, 20, 50, 122, 23.551, 3.551, 17.8
                    psi, 20, 60, 140, 24.734, 4.734, 23.7
                    psi, 20, 70, 158, 25.918, 5.918, 29.6
                    psi, 30, -10, 14, 25.426, -4.574, -15.2
                    psi, 30, 0, 32, 26.951, -3.049, -10.2
                    psi, 30, 10, 50, 28.475, -1.525, -5.1
                    psi, 30, 20, 68, 30, 0, 0
                    psi, 30, 30, 86, 31.525, 1.525, 5.1
                    psi, 30, 50, 122, 34.574, 4.574, 15.2
                    psi, 30, 60, 140, 36.099, 6.099, 20.3
                    psi, 30, 70, 158, 37.623, 7.623, 25.4
                    psi, 50, -10, 14, 43.379, -6.621, -13.2
                    psi, 50, 10, 50, 47.793, -2.207, -4.4
                    psi, 50, 30, 86, 52.207, 2.207, 4.4
                    psi, 50, 40, 104, 54.414, 4.414, 8.8
                    psi, 50, 50, 122, 56.621, 6.621, 13.2
                    psi, 50, 60, 140, 58.828, 8.828, 17.7
                    psi, 50, 70, 158, 61.035, 11.035, 22.1
                    """)
    void readingsOfOneChargeByTemperature(
            String unit,
            double charge,
            double celsius,
            double fahrenheit,
            double reading,
            double change,
            double percent) {
        Unit<Pressure> in = UNITS.get(unit);
        ChargeReading set = new ChargeReading(GaugePressure.of(charge, in), TWENTY, AIR);
        ChargeAtTemperature at = ChargeAtTemperature.of(set, Temperature.celsius(celsius));
        assertThat(at.read().pressure().in(in)).isCloseTo(reading, within(0.0005));
        assertThat(at.change().in(in)).isCloseTo(change, within(0.0005));
        assertThat(100 * at.changeOfGauge()).isCloseTo(percent, within(0.05));
        assertThat(ChargeAtTemperature.of(set, Temperature.fahrenheit(fahrenheit))
                        .read()
                        .pressure()
                        .in(in))
                .isCloseTo(reading, within(0.0005));
    }

    @Test
    void workingsShowTheFormulaAndItsValues() {
        ChargeReading set = new ChargeReading(GaugePressure.bar(1), TWENTY, AIR);
        String text =
                ChargeAtTemperature.of(set, Temperature.celsius(0)).workings().text(UnitSystem.SI);
        assertThat(text)
                .contains("(p_1 + p_a_1) * T_2 / T_1 - p_a_2")
                .contains("(1 bar + 1.01325 bar abs) * 273.15 K / 293.15 K - 1.01325 bar abs")
                .contains("= 0.862647 bar");
    }

    @Test
    void aChargeOfZeroHasNoShareToChangeBy() {
        ChargeReading zero = new ChargeReading(GaugePressure.bar(0), TWENTY, AIR);
        assertThatThrownBy(() ->
                        ChargeAtTemperature.of(zero, Temperature.celsius(0)).changeOfGauge())
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void textNamesBothReadings() {
        ChargeReading set = new ChargeReading(GaugePressure.psi(12), Temperature.fahrenheit(68), AIR);
        assertThat(ChargeAtTemperature.of(set, Temperature.fahrenheit(32)).text(UnitSystem.IP))
                .isEqualTo("12 psi with the gas at 68 degF reads 10.18 psi with the gas at 32 degF (-1.821 psi)");
    }
}
