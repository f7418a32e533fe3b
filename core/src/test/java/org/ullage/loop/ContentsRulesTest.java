package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.Area;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Units;

/** Rules of thumb for single parts. */
class ContentsRulesTest {

    @ParameterizedTest
    @EnumSource
    void everyPowerRuleScalesWithTheOutput(PowerRule rule) {
        VolumeRange one = rule.item(Power.kilowatts(1)).volume();
        VolumeRange sixty = rule.item(Power.kilowatts(60)).volume();
        assertThat(one.low().si()).isPositive();
        assertThat(sixty.high().in(Units.LITRE)).isCloseTo(60 * one.high().in(Units.LITRE), within(1e-9));
        assertThat(rule.source().provenance()).isIn(Provenance.COMMON_PRACTICE, Provenance.FROM_MEMORY);
    }

    @ParameterizedTest
    @EnumSource
    void everyPieceRuleScalesWithTheCount(PieceRule rule) {
        assertThat(rule.item(3).volume().low().si())
                .isCloseTo(3 * rule.item(1).volume().low().si(), within(1e-12));
        assertThat(rule.source().document()).isNotBlank();
        assertThatThrownBy(() -> rule.item(0))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("count 0 is not allowed: it must be 1 or more");
    }

    @ParameterizedTest
    @CsvSource({
        "COOLING_ALL_AIR, 0.40, 0.55",
        "COOLING_AIR_WATER, 0.70, 1.30",
        "HEATING_ALL_AIR, 1.25, 2.00",
        "HEATING_AIR_WATER, 1.20, 1.90",
        // a square foot of collector is 0.0929 m2; 1.5 to 2 gal/ft2 is 61 to 81.5 L/m2
        "SOLAR_STORAGE, 61.12, 81.49",
    })
    void litresPerSquareMetre(AreaRule rule, double low, double high) {
        VolumeRange volume = rule.item(Area.squareMetres(1)).volume();
        assertThat(volume.low().in(Units.LITRE)).isCloseTo(low, within(0.005));
        assertThat(volume.high().in(Units.LITRE)).isCloseTo(high, within(0.005));
        assertThat(rule.source().provenance()).isEqualTo(Provenance.PUBLISHED);
    }

    @Test
    void aRangeWithoutTypicalValueHasItsMiddle() {
        VolumeRange rib = PieceRule.RADIATOR_RIB.item(10).volume();
        assertThat(rib.low().in(Units.LITRE)).isCloseTo(5, within(1e-9));
        assertThat(rib.typical().in(Units.LITRE)).isCloseTo(12, within(1e-9));
        assertThat(rib.high().in(Units.LITRE)).isCloseTo(19, within(1e-9));
    }

    @Test
    void noOutputNoContents() {
        assertThatThrownBy(() -> PowerRule.CAST_IRON_SECTIONAL_BOILER.item(Power.kilowatts(-1)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("output -1 kW");
    }
}
