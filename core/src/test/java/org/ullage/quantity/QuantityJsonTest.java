package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** In JSON a quantity is the text that parses back to it. */
class QuantityJsonTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    static List<QuantityType<?, ?>> types() {
        return QuantityType.ALL;
    }

    @ParameterizedTest
    @MethodSource("types")
    void comesBackEqual(QuantityType<?, ?> type) throws Exception {
        for (double si : new double[] {0.5, 1.0 / 3, Math.PI / 4, 1e-9}) {
            Quantity<?, ?> quantity = type.ofSi().apply(si);
            String json = JSON.writeValueAsString(quantity);
            assertThat(json).isEqualTo("\"" + quantity + "\"");
            Object back = JSON.readValue(json, quantity.getClass());
            assertThat(back).isEqualTo(quantity);
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void aBareNumberIsRefused(QuantityType<?, ?> type) {
        assertThatThrownBy(() -> JSON.readValue("0.5", type.example().getClass()))
                .isInstanceOf(MismatchedInputException.class);
    }

    @Test
    void theRefusalIsOurs() {
        assertThatThrownBy(() -> JSON.readValue("\"12 apples\"", Volume.class))
                .hasCauseInstanceOf(UnreadableQuantityException.class)
                .hasMessageContaining("\"12 apples\" cannot be read as volume");
        assertThatThrownBy(() -> JSON.readValue("\"-300 degC\"", Temperature.class))
                .hasCauseInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above -273.15 degC");
    }
}
