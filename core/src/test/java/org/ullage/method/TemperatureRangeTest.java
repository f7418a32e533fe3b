package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.workings.Caution;

class TemperatureRangeTest {

    private static final Temperature LOWEST = Temperature.celsius(30);
    private static final Temperature HIGHEST = Temperature.celsius(120);
    private static final Caution WARM = new Caution("warm", Source.given());
    private static final TemperatureRange RANGE = new TemperatureRange(
            Temperature.celsius(10),
            LOWEST,
            HIGHEST,
            List.of(new TemperatureRange.Remark(Temperature.celsius(40), Temperature.celsius(60), WARM)),
            Source.given());

    @Test
    void endsBelongToTheRange() {
        RANGE.require(LOWEST.si());
        RANGE.require(HIGHEST.si());
        assertThatThrownBy(() -> RANGE.require(Temperature.celsius(29.9).si()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("from 30 degC");
        assertThatThrownBy(() -> RANGE.require(Temperature.celsius(120.1).si()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("to 120 degC");
    }

    @Test
    void rangeWithoutAnUpperEndSaysSo() {
        TemperatureRange open = new TemperatureRange(LOWEST, LOWEST, null, List.of(), Source.given());
        open.require(Temperature.celsius(300).si());
        assertThatThrownBy(() -> open.require(Temperature.celsius(20).si())).hasMessageContaining("upwards");
    }

    @Test
    void remarksHoldFromEndToEnd() {
        assertThat(remarks(39.9)).isEmpty();
        assertThat(remarks(40)).containsExactly(WARM);
        assertThat(remarks(60)).containsExactly(WARM);
        assertThat(remarks(60.1)).isEmpty();
    }

    private static List<Caution> remarks(double celsius) {
        return RANGE.remarks(Temperature.celsius(celsius).si());
    }
}
