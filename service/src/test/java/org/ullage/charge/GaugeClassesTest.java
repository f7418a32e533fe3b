package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.provenance.Provenance;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;

class GaugeClassesTest {

    /** ASME B40.100: grade B as quoted in US Army course SM0486, the others recalled; EN 837-1:1996 Table 11. Percent of span. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    grade 4A, 0.1, 0.1, 0.1
                    grade 3A, 0.25, 0.25, 0.25
                    grade 2A, 0.5, 0.5, 0.5
                    grade 1A, 1, 1, 1
                    grade B, 3, 2, 3
                    grade D, 5, 5, 5
                    class 0.1, 0.1, 0.1, 0.1
                    class 0.25, 0.25, 0.25, 0.25
                    class 0.6, 0.6, 0.6, 0.6
                    class 1, 1, 1, 1
                    class 2.5, 2.5, 2.5, 2.5
                    class 4, 4, 4, 4
                    grade A, 2, 1, 2
                    grade C, 4, 3, 4
                    class 1.6, 1.6, 1.6, 1.6
                    """)
    void limitsByQuarter(String grade, double lower, double middle, double upper) {
        assertThat(GaugeClasses.all().stream().filter(each -> each.grade().equals(grade)))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.percentOfSpan(ScalePart.LOWER_QUARTER)).isEqualTo(lower);
                    assertThat(each.percentOfSpan(ScalePart.MIDDLE_HALF)).isEqualTo(middle);
                    assertThat(each.percentOfSpan(ScalePart.UPPER_QUARTER)).isEqualTo(upper);
                });
    }

    @Test
    void eachClassSaysHowItWasRead() {
        assertThat(GaugeClasses.ASME_B.source().provenance()).isEqualTo(Provenance.PUBLISHED);
        assertThat(GaugeClasses.ASME_B.source().reading()).contains("SM0486");
        assertThat(GaugeClasses.ASME_D.source().provenance()).isEqualTo(Provenance.FROM_MEMORY);
        assertThat(GaugeClasses.EN_2_5.source().document()).isEqualTo("EN 837-1:1996");
        assertThat(GaugeClasses.all()).hasSize(15).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1", "1, 0, 1", "1, 1, 0"})
    void everyPartOfTheScaleNeedsALimit(double lower, double middle, double upper) {
        assertThatThrownBy(() -> new GaugeClass("certificate", "own", lower, middle, upper, Source.given()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("permissible error of a gauge");
    }

    @Test
    void aLimitThatIsNoPercentageIsRefused() {
        assertThat(GaugeClass.uniform("certificate", "own", 100, Source.given()).middleHalf())
                .isEqualTo(100);
        for (double percent : new double[] {0, -1, 101, Double.NaN}) {
            assertThatThrownBy(() -> GaugeClass.uniform("certificate", "own", percent, Source.given()))
                    .isInstanceOf(OutOfRangeException.class)
                    .hasMessageContaining("permissible error of a gauge");
        }
    }
}
