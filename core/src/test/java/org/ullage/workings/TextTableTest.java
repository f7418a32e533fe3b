package org.ullage.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void columnsAreAsWideAsTheirWidestCellAndLinesEndWithoutBlanks() {
        TextTable table = new TextTable(List.of("a", "long title", "c"));
        table.add(List.of("wide cell", "x", ""));
        assertThat(table.text()).isEqualTo("a          long title  c\nwide cell  x\n");
    }

    @Test
    void rowOfAnotherLengthIsRefused() {
        TextTable table = new TextTable(List.of("a", "b"));
        assertThatThrownBy(() -> table.add(List.of("only one")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 cells");
    }
}
