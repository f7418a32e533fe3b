package org.ullage.provenance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceTest {

    private static final List<Source> ONE_OF_EACH = List.of(
            Source.published("IAPWS R7-97", "2012, Table 2"),
            Source.computed("Boyle's law", "re-arranged"),
            Source.fromMemory("EN 12828", "2012, Annex D"),
            Source.commonPractice("round up to the next size made"),
            Source.given());

    @Test
    void oneLineTellsProvenanceDocumentPlaceAndReading() {
        assertThat(ONE_OF_EACH)
                .map(Source::toString)
                .containsExactly(
                        "[PUBLISHED] IAPWS R7-97, 2012, Table 2",
                        "[COMPUTED] Boyle's law, re-arranged",
                        "[FROM_MEMORY] EN 12828, 2012, Annex D (not checked against the document)",
                        "[COMMON_PRACTICE] round up to the next size made",
                        "[GIVEN] the caller's value");
    }

    @Test
    void everyProvenanceHasItsFactory() {
        assertThat(ONE_OF_EACH).map(Source::provenance).containsExactlyElementsOf(Arrays.asList(Provenance.values()));
    }

    @Test
    void aQuotedDocumentIsPublishedButSecondHand() {
        Source quoted = Source.secondHand("ASME BPVC Section IV", "HG-709", "quoted in a state rule");
        assertThat(quoted.provenance()).isEqualTo(Provenance.PUBLISHED);
        assertThat(quoted.reading()).isEqualTo("second-hand: quoted in a state rule");
        assertThat(quoted)
                .hasToString("[PUBLISHED] ASME BPVC Section IV, HG-709 (second-hand: quoted in a state rule)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t"})
    void theDocumentIsNamed(String blank) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Source.published(blank, "Table 2"))
                .withMessage("a source must name its document, library or practice; it was blank");
    }
}
