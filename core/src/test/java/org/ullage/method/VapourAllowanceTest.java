package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.loop.StagnationContents;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Volume;
import org.ullage.workings.Step;

class VapourAllowanceTest {

    private static final Constant TENTH_MORE = new Constant("f_c", 1.1, "1", Source.commonPractice("test"));
    private static final StagnationContents BOILING = new StagnationContents(Volume.litres(30), Volume.litres(10));

    @Test
    void pipesCountOnlyWhereTheRuleCountsThem() {
        assertThat(redone(new VapourAllowance(TENTH_MORE, false))).isEqualTo(1.1 * 0.030);
        assertThat(redone(new VapourAllowance(TENTH_MORE, true))).isEqualTo(1.1 * 0.030 + 0.010);
    }

    private static double redone(VapourAllowance rule) {
        double vapour = rule.cubicMetres(BOILING, "test");
        Step step = rule.step(BOILING, Volume.ofSi(vapour));
        assertThat(Redo.of(step)).isEqualTo(vapour);
        return vapour;
    }

    @Test
    void saysItselfInWords() {
        assertThat(VapourAllowance.NONE).hasToString("none");
        assertThat(new VapourAllowance(TENTH_MORE, false)).hasToString("1.1 x the collectors");
        assertThat(new VapourAllowance(TENTH_MORE, true))
                .hasToString("1.1 x the collectors and the pipes that may boil empty");
    }
}
