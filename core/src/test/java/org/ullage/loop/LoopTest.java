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

    @Test
    void solarLoopKeepsWhatMayBoil() {
        StagnationContents boiling = new StagnationContents(Volume.litres(30), Volume.litres(0));
        Loop loop = Loop.withContents(Volume.litres(65)).rigid().filledWith(TestFluid.MIXTURE);
        assertThat(loop.stagnation()).isNull();
        assertThat(loop.stagnating(boiling).stagnation()).isEqualTo(boiling);
    }

    @Test
    void negativeContentsThatMayBoilAreRefusedByName() {
        Volume none = Volume.litres(0);
        assertThatThrownBy(() -> new StagnationContents(Volume.litres(-1), none))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("collector contents -1 L");
        assertThatThrownBy(() -> new StagnationContents(none, Volume.litres(-1)))
                .hasMessageStartingWith("contents of pipes that may boil empty -1 L");
    }

    /** The test fluid boils at 100 degC under 1 bar; at that very pressure it still counts as liquid. */
    @Test
    void fluidIsLiquidFromItsVapourPressureUp() {
        double boiling = TestFluid.WATER.vapourPressureSi(373.15);
        assertThat(TestFluid.WATER.isLiquidSi(373.15, boiling)).isTrue();
        assertThat(TestFluid.WATER.isLiquidSi(373.15, boiling * 0.999)).isFalse();
    }
}
