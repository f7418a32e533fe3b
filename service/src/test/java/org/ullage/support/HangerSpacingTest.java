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
    void notForSpansWithVessels() {
        HangerSpacing spacing = HangerSpacing.of(SpacingRule.IMC, SpacedPipe.STEEL, "2");
        assertThat(spacing.text(UnitSystem.IP))
                .startsWith("steel pipe 2: hangers no more than 12 ft apart [PUBLISHED]");
        assertThat(spacing.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("vessels"));
    }
}
