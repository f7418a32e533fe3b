package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.method.TestFluid;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class LoopTest {

    @Test
    void keepsWhatItWasGiven() {
        Loop loop = Loop.withContents(Volume.litres(1200)).steel().filledWith(TestFluid.WATER);
        assertThat(loop.contents()).isEqualTo(Volume.litres(1200));
        assertThat(loop.pipe()).isEqualTo(PipeMaterial.STEEL);
        assertThat(loop.fluid()).isEqualTo(TestFluid.WATER);
        assertThat(Loop.withContents(Volume.litres(1))
                        .pipeNotStated()
                        .filledWith(TestFluid.WATER)
                        .pipe())
                .isNull();
    }

    @Test
    void emptyLoopIsRefused() {
        assertThatThrownBy(() -> Loop.withContents(Volume.litres(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("contents 0 L")
                .hasMessageContaining("above zero");
    }

    @Test
    void coefficientsAgreeWithTheirMetricPrint() {
        // the handbook prints 11.7e-6 and 17.1e-6 per kelvin beside the values per degF
        assertThat(PipeMaterial.STEEL.linearExpansion().in(Units.PER_KELVIN)).isCloseTo(11.7e-6, within(1e-18));
        assertThat(PipeMaterial.COPPER.linearExpansion().in(Units.PER_KELVIN)).isCloseTo(17.1e-6, within(1e-18));
        assertThat(PipeMaterial.RIGID.linearExpansion().si()).isZero();
    }
}
