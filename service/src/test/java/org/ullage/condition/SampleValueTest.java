package org.ullage.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.quantity.OutOfRangeException;

class SampleValueTest {

    @ParameterizedTest
    @EnumSource
    void bothEndsOfTheScaleAreReadings(SampleQuantity quantity) {
        assertThat(new SampleValue(quantity, quantity.least()).number()).isZero();
        assertThat(new SampleValue(quantity, quantity.most()).number()).isEqualTo(quantity.most());
        assertThatThrownBy(() -> new SampleValue(quantity, Math.nextUp(quantity.most())))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining(quantity.word());
        assertThatThrownBy(() -> new SampleValue(quantity, -Double.MIN_VALUE)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void theTextCarriesTheUnit() {
        assertThat(SampleValue.ph(7.9).text()).isEqualTo("pH 7.9");
        assertThat(SampleValue.conductivity(420).text()).isEqualTo("conductivity 420 uS/cm");
    }
}
