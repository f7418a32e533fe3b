package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

class GaugeConflictTest {

    private static final GaugePressure THIRTY = GaugePressure.psi(30);

    private static GaugeConflict at(double psi) {
        return GaugeConflict.of(GaugeRangeRules.BOILER_MARYLAND, THIRTY, GaugePressure.psi(psi), GaugeRanges.PSI_DIALS);
    }

    /** COMAR 09.12.01.12 B(2): 45 to 90 psi for a 30 psi boiler. */
    @ParameterizedTest
    @CsvSource({"44.9, false", "45, true", "60, true", "90, true", "90.1, false"})
    void marylandScaleForAThirtyPsiBoiler(double high, boolean allowed) {
        GaugeRange range = GaugeRange.given(GaugePressure.psi(0), GaugePressure.psi(high));
        assertThat(GaugeRangeRules.BOILER_MARYLAND.allows(range, THIRTY)).isEqualTo(allowed);
    }

    @Test
    void otherScaleRules() {
        GaugeRange hundred = GaugeRange.given(GaugePressure.psi(0), GaugePressure.psi(100));
        assertThat(GaugeRangeRules.BOILER_MARYLAND.allows(hundred, THIRTY)).isFalse();
        assertThat(GaugeRangeRules.BOILER_ASME_IV.allows(hundred, THIRTY)).isTrue();
        assertThat(GaugeRangeRules.HYDRO_PNEUMATIC_COLUMBIA.allows(hundred, THIRTY))
                .isTrue();
        assertThat(GaugeRangeRules.scales())
                .hasSize(3)
                .allSatisfy(rule -> assertThat(rule.toString()).contains("1.5"));
        assertThatThrownBy(() -> GaugeRangeRules.BOILER_ASME_IV.allows(hundred, GaugePressure.psi(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("relief setting");
    }

    @Test
    void twelvePsiOnTheDialThatTheRuleAllowsStandsTooLow() {
        GaugeConflict conflict = at(12);
        assertThat(conflict.isConflict()).isTrue();
        assertThat(conflict.allowed()).containsExactly(GaugeRanges.PSI_DIALS.get(2));
        assertThat(GaugeRanges.PSI_DIALS.get(2).part(GaugePressure.psi(12))).isEqualTo(ScalePart.LOWER_QUARTER);
        assertThat(conflict.text(UnitSystem.IP))
                .contains("scale ends at 1.5 to 3.0 x maximum allowable working pressure of 30 psi; ")
                .endsWith("COMAR (Maryland) 09.12.01.12, B(2)")
                .contains("0 psi to 60 psi")
                .contains("a gauge of its own");
    }

    @Test
    void fifteenPsiStandsJustInTheMiddleHalf() {
        assertThat(at(15).isConflict()).isFalse();
        assertThat(at(15).text(UnitSystem.IP)).contains("15 psi stands in the middle half of 0 psi to 60 psi");
    }

    @Test
    void adviceNamesItsSources() {
        assertThat(GaugeRangeRules.advice())
                .allSatisfy(rule -> assertThat(rule.toString()).contains(": ").contains("["));
    }
}
