package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BracketedRootTest {

    @Test
    void valuesWhoseProductUnderflowsDoNotHideTheCrossing() {
        assertThat(BracketedRoot.of(x -> 1e-200 * (x - 3e5), 1e5, 1e7)).isCloseTo(3e5, within(1e-4));
    }
}
