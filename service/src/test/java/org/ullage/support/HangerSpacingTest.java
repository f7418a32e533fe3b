package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class HangerSpacingTest {

    /** Printed in feet; 32 in is printed as 2.67 ft. */
    @ParameterizedTest
    @CsvFileSource(resources = "hanger-spacing.tsv", delimiter = '\t', useHeadersInDisplayName = true)
    void printedRows(SpacingRule rule, SpacedPipe pipe, String size, double feet) {
        HangerSpacing spacing = HangerSpacing.of(rule, pipe, size);
        assertThat(spacing.span().in(Units.FOOT)).isCloseTo(feet, within(0.005));
        assertThat(spacing.source().provenance()).isEqualTo(Provenance.PUBLISHED);
    }

    @ParameterizedTest
    @CsvSource({"1/2, 7", "1-1/2, 9", "2, 10", "3, 12", "6, 17", "10, 22"})
    void rememberedGuideSpansSaySo(String size, double feet) {
        HangerSpacing spacing = HangerSpacing.of(SpacingRule.MSS_GUIDE, SpacedPipe.STEEL, size);
        assertThat(spacing.span().in(Units.FOOT)).isCloseTo(feet, within(1e-12));
        assertThat(spacing.source().provenance()).isEqualTo(Provenance.FROM_MEMORY);
    }

    @ParameterizedTest
    @CsvSource({
        "MSS_GUIDE, STEEL, 5",
        "MSS_GUIDE, STEEL, 7",
        "MSS_GUIDE, PEX, 1",
        "IMC, PEX, 2",
        "IMC, STEEL, two",
        "IMC, STEEL, ''"
    })
    void whatTheRuleDoesNotSayIsRefused(SpacingRule rule, SpacedPipe pipe, String size) {
        assertThatThrownBy(() -> HangerSpacing.of(rule, pipe, size))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("not to be read between sizes");
    }

    @Test
    void aRefusalNamesTheSizesOfTheRule() {
        assertThatThrownBy(() -> HangerSpacing.of(SpacingRule.IMC, SpacedPipe.CPVC, "14"))
                .hasMessageContaining("pipe of IMC Table 305.4")
                .hasMessageContaining("one of the sizes 1/8 to 1, 1-1/4 to 12");
        assertThatThrownBy(() -> HangerSpacing.of(SpacingRule.MSS_GUIDE, SpacedPipe.COPPER_TUBE, "14"))
                .hasMessageContaining("one of the sizes 1/2, 3/4, 1, 1-1/4");
    }

    @Test
    void aRefusalEchoesASizeButNoEssay() {
        assertThatThrownBy(() -> HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "14"))
                .hasMessageContaining("steel pipe 14");
        assertThatThrownBy(() -> HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "x".repeat(1000)))
                .hasMessageContaining("of a size that is no size");
    }

    @Test
    void theSmallestAndTheLargestSizeBelongToTheRule() {
        assertThat(HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "1/8")
                        .span()
                        .in(Units.FOOT))
                .isCloseTo(12, within(1e-12));
        assertThat(HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "12")
                        .span()
                        .in(Units.FOOT))
                .isCloseTo(12, within(1e-12));
    }

    @Test
    void notForSpansWithVessels() {
        HangerSpacing spacing = HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "2");
        assertThat(spacing.text(UnitSystem.IP))
                .startsWith("steel pipe 2: hangers no more than 12 ft apart [PUBLISHED]");
        assertThat(spacing.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("vessels"));
    }
}
