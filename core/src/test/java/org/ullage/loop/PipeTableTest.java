package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/** Tables read afresh; {@link PipeStandard} keeps the ones it has read. */
class PipeTableTest {

    @Test
    void onlyTheRowsOfTheSeriesAreTaken() {
        PipeTable typeL = new PipeTable(PipeStandard.ASTM_B88_L, "pipes-astm-b88.tsv", "L");
        // ASTM B88: type L 3/4 has a wall of 0.045 in, K 0.065 and M 0.032
        assertThat(typeL.find("3/4").wall()).isEqualTo(Length.of(0.045, Units.INCH));
        assertThat(typeL.sizes()).extracting(PipeSize::size).doesNotHaveDuplicates();
    }

    @Test
    void sizesOfAnInchTableAreInchesWithOrWithoutTheMark() {
        PipeTable typeL = new PipeTable(PipeStandard.ASTM_B88_L, "pipes-astm-b88.tsv", "L");
        assertThat(typeL.find("0.75 in")).isEqualTo(typeL.find("0.75")).isEqualTo(typeL.find("3/4"));
    }

    @Test
    void everySpellingOfARowIsFound() {
        PipeTable medium = new PipeTable(PipeStandard.EN_10255_MEDIUM, "pipes-en-10255.tsv", "medium");
        assertThat(medium.find("DN 25")).isEqualTo(medium.find("1 in")).isEqualTo(medium.find("25"));
        assertThatThrownBy(() -> medium.find("6"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("DN 6, DN 150");
    }
}
