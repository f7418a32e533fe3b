package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;

/** How a nominal size may be written, and what is said when it is not one. */
class PipeSizeNameTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1-1/2",
                "1 1/2",
                "1-1/2\"",
                "1-1/2 in",
                "1 1/2 inch",
                "1.5",
                "1.50\"",
                "NPS 1-1/2",
                "nps 1.5",
                " 1-1/2 ",
                "1\u00bd",
                "1-1/2''",
                "1-1/2\u2033",
                "DN 40",
                "DN40",
                "dn 40",
                "1\u00a01/2",
                "1.5 in."
            })
    void oneSizeWrittenInManyWays(String text) {
        assertThat(PipeStandard.ASME_B36_10_SCH_40.size(text).size()).isEqualTo("1-1/2");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "22 x 1",
                "22x1",
                "22 X 1.0",
                "22.0x1",
                "22 mm x 1 mm",
                "22\u00d71",
                "22 x 1 mm",
                "d22 x 1",
                "\u00d822x1"
            })
    void outsideDiameterAndWall(String text) {
        assertThat(PipeStandard.EN_1057.size(text).size()).isEqualTo("22 x 1");
    }

    @ParameterizedTest
    @CsvSource({
        "EN_10255_MEDIUM, DN 25, DN 25",
        "EN_10255_MEDIUM, 25, DN 25",
        "EN_10255_MEDIUM, 1, DN 25",
        "EN_10255_MEDIUM, 1 in, DN 25",
        "EN_10255_HEAVY, 1-1/4, DN 32",
        "EN_10255_HEAVY, 0.5, DN 15",
        "EN_10255_HEAVY, 6 in, DN 150",
        "EN_ISO_15875_S5, 20 x 1.9, 20 x 1.9",
        "EN_ISO_15875_S5, 20, 20 x 1.9",
        "EN_ISO_15875_S5, d20, 20 x 1.9",
        "EN_ISO_15875_S5, 20 mm, 20 x 1.9",
        "DIN_16893_SDR_11, d160, d160",
        "DIN_16893_SDR_11, 32 x 2.9, d32",
        "ASTM_F1281, 1216, 1/2",
        "ASTM_B88_L, .75, 3/4",
        "ASME_B36_10_SCH_40, 8, 8",
        "ASME_B36_10_SCH_40, DN 8, 1/4",
    })
    void spellingsByStandard(PipeStandard standard, String written, String size) {
        assertThat(standard.size(written).size()).isEqualTo(size);
    }

    /** A bare 6 is the thread of DN 150 or the nominal diameter of the smallest tube. */
    @Test
    void aSizeThatCouldBeTwoIsRefused() {
        assertThatThrownBy(() -> PipeStandard.EN_10255_MEDIUM.size("6"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "size of EN 10255 medium \"6\" is not allowed: it must be one size only, which is true of DN 6, DN"
                                + " 150; write it so that it is clear");
    }

    @ParameterizedTest
    @CsvSource({
        "ASTM_B88_L, 7/8",
        "ASTM_B88_L, DN 20",
        "ASTM_B88_L, 22 x 1",
        "ASTM_B88_M, 1/4",
        "ASTM_B88_L, 3/0",
        "ASTM_B88_L, ''",
        "ASTM_B88_L, three quarters",
        "EN_1057, 22",
        "EN_1057, 23 x 1",
        "EN_1057, 22 x 1.3",
        "EN_1057, 1 x 22",
        "EN_ISO_15875_S5, 20 x 2",
        "METRIC_PLASTIC, 16",
        "METRIC_PLASTIC, 4 x 2",
        "METRIC_PLASTIC, 16 x 0",
        "METRIC_PLASTIC, x",
        "METRIC_PLASTIC, 16 x 2 x 3",
        "METRIC_PLASTIC, 1.6.1 x 2",
    })
    void noSuchSize(PipeStandard standard, String size) {
        assertThatThrownBy(() -> standard.size(size)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void theMessageListsTheSizes() {
        assertThatThrownBy(() -> PipeStandard.ASTM_D2846.size("7/8"))
                .hasMessage(
                        "size of ASTM D2846 CPVC CTS SDR 11 \"7/8\" is not allowed: it must be one of 1/2, 3/4, 1, 1-1/4,"
                                + " 1-1/2, 2 (sizes: inch); take one of these, or describe the pipe by outside diameter and wall with"
                                + " Pipe.ofWall");
    }

    @Test
    void aPairOfTheSeriesThatIsNoRowIsComputedAndSaysSo() {
        PipeSize between = PipeStandard.EN_1057.size("54 x 1.1");
        assertThat(between.outside()).isEqualTo(Length.millimetres(54));
        assertThat(between.bore()).isEqualTo(Length.millimetres(51.8));
        assertThat(between.source().provenance()).isEqualTo(Provenance.COMPUTED);
        assertThat(between.source().toString()).contains("not among the rows");
    }

    @Test
    void anyPairOfPlainMetricPipeIsTakenAsItIsWritten() {
        PipeSize odd = PipeStandard.METRIC_PLASTIC.size("19 x 1.9");
        assertThat(odd.bore()).isEqualTo(Length.millimetres(15.2));
        assertThat(odd.name()).isEqualTo("metric plastic 19 x 1.9");
        assertThat(odd.source().provenance()).isEqualTo(Provenance.GIVEN);
    }

    @Test
    void aTextOfSixtyCharactersIsRepeatedInFull() {
        String text = "x".repeat(60);
        assertThatThrownBy(() -> PipeStandard.METRIC_PLASTIC.size(text)).hasMessageContaining("\"" + text + "\"");
    }

    @Test
    void aLongTextIsRefusedAtOnceAndNotRepeatedInFull() {
        String text = "9".repeat(200_000) + " x 1";
        assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThatThrownBy(() -> PipeStandard.METRIC_PLASTIC.size(text))
                        .isInstanceOf(OutOfRangeException.class)
                        .hasMessageContaining("9".repeat(60) + "...\"")
                        .extracting(Throwable::getMessage)
                        .satisfies(message -> assertThat(message).hasSizeLessThan(600)));
    }
}
