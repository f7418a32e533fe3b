package org.ullage.vessel;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

class GasTemperaturesTest {

    @Test
    void aRatioBeyondADoubleIsRefused() {
        Temperature room = Temperature.celsius(20);
        GasTemperatures gas = new GasTemperatures(Temperature.ofSi(Double.MIN_VALUE), room, room, Source.given());
        assertThatThrownBy(gas::coldRatio)
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("temperature of the gas at charging");
    }
}
