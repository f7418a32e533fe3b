package org.ullage.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.Map;
import org.junit.jupiter.api.Test;

class CitedTableTest {

    private static CitedTable read() {
        return CitedTable.read(CitedTableTest.class, "cited-table.tsv");
    }

    @Test
    void rowsAreNamedByTheirColumnsAndMayHaveEmptyCells() {
        assertThat(read().rows())
                .containsExactly(
                        Map.of("size", "15", "wall", "1.0", "mark", "a"),
                        Map.of("size", "22", "wall", "", "mark", "b"));
    }

    @Test
    void headerAnswersByItsKeys() {
        assertThat(read().header("Unit")).isEqualTo("mm");
        assertThat(read().header("What")).isEqualTo("a table for a test, with a line that goes on");
        assertThatIllegalStateException()
                .isThrownBy(() -> read().header("Pairs"))
                .withMessage("the jar is damaged: cited-table.tsv lacks the header Pairs");
    }

    @Test
    void markIsASourceWhosePlaceAndReadingMayBeLeftOut() {
        assertThat(read().source("a")).isEqualTo(new Source(Provenance.PUBLISHED, "a book", "p. 1", "second-hand"));
        assertThat(read().source("b")).isEqualTo(new Source(Provenance.GIVEN, "no document", "", ""));
        assertThatIllegalStateException().isThrownBy(() -> read().source("c")).withMessageContaining("Mark c");
    }

    @Test
    void missingFileIsNamed() {
        assertThatIllegalStateException()
                .isThrownBy(() -> CitedTable.read(CitedTableTest.class, "no-such-table.tsv"))
                .withMessage("the jar of org.ullage.provenance is incomplete: it lacks no-such-table.tsv");
    }
}
