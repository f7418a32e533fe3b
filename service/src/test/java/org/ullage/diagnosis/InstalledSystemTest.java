package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.loop.Loop;
import org.ullage.method.TestFluid;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

class InstalledSystemTest {

    private static InstalledSystem system(double error, double[] bars, double cold, double hot) {
        return new InstalledSystem(
                Loop.withContents(Volume.litres(100)).rigid().filledWith(TestFluid.WATER),
                Volume.litres(error),
                Volume.litres(12),
                GaugePressure.bar(bars[0]),
                GaugePressure.bar(bars[1]),
                GaugePressure.bar(bars[2]),
                Temperature.celsius(20),
                ReliefValve.iso4126(GaugePressure.bar(3)),
                Temperature.celsius(cold),
                Temperature.celsius(hot),
                AbsolutePressure.STANDARD_ATMOSPHERE);
    }

    @ParameterizedTest
    @CsvSource({
        "-1, 1, 1.2, 1.4, 10, 65, error of the contents -1 L",
        "100, 1, 1.2, 1.4, 10, 65, error of the contents 100 L",
        "3, -1.01325, 1.2, 1.4, 10, 65, gas charge -1.01325 bar",
        "3, 1.3, 1.2, 1.4, 10, 65, gas charge 1.3 bar",
        "3, 1, 1.5, 1.4, 10, 65, lowest fill pressure 1.5 bar",
        "3, 1, 1.2, 3, 10, 65, highest fill pressure 3 bar",
        "3, 1, 1.2, 1.4, 65, 65, lowest temperature 65 degC",
    })
    void whatDoesNotFitTogetherIsRefused(
            double error, double charge, double low, double high, double cold, double hot, String told) {
        assertThatThrownBy(() -> system(error, new double[] {charge, low, high}, cold, hot))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(told)
                .hasMessageContaining("check it against the record");
    }

    @Test
    void oneFillPressureEqualToTheChargeAndKnownContentsAreFine() {
        InstalledSystem exact = system(0, new double[] {1, 1, 1}, 10, 65);
        assertThat(exact.lowestFill()).isEqualTo(exact.charge());
        assertThat(exact.contentsError().si()).isZero();
    }
}
