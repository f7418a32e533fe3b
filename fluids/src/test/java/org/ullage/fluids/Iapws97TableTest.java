package org.ullage.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class Iapws97TableTest {

    @Test
    void keepsThePublishedNumbering() {
        double[] n = Iapws97Table.read("iapws-r7-97-region-1.tsv").column("n");
        assertThat(n).hasSize(35);
        assertThat(n[0]).isZero();
        assertThat(n[34]).isEqualTo(-0.93537087292458e-25);
    }

    @Test
    void saysWhichTableIsMissing() {
        assertThatThrownBy(() -> Iapws97Table.read("absent.tsv"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("the jar of org.ullage.fluids is incomplete: it lacks absent.tsv");
    }
}
