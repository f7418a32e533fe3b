package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** Contents from boiler output: a range around each rule of thumb. */
class QuickEstimateTest {

    private static final double BAND = Math.sqrt(1.5);

    private static double litres(Volume volume) {
        return volume.in(Units.LITRE);
    }

    /** Typical litres per kilowatt; where another rule lies outside the band, low or high is that rule. */
    @ParameterizedTest
    @CsvSource({
        "CONVECTORS, 6, 0, 0",
        "AIR_COILS, 8, 0, 0",
        "STEEL_PANEL_RADIATORS, 11, 0, 0",
        "LOW_CONTENT_RADIATORS, 3, 0, 0",
        "CAST_IRON_RADIATORS, 14, 0, 0",
        "UNDERFLOOR, 23, 12.6, 0",
        "LONG_MAINS, 20, 0, 0",
        "SMALL_DOMESTIC, 6, 0, 0",
        "NOT_KNOWN, 12.93, 10, 0",
    })
    void everyKind(EmitterType type, double typical, double low, double high) {
        Contents contents = QuickEstimate.of(Power.kilowatts(60), type).contents();
        assertThat(litres(contents.typical())).isCloseTo(60 * typical, within(1e-9));
        assertThat(litres(contents.low())).isCloseTo(60 * (low == 0 ? typical / BAND : low), within(1e-9));
        assertThat(litres(contents.high())).isCloseTo(60 * (high == 0 ? typical * BAND : high), within(1e-9));
        assertThat(contents.basis()).isEqualTo(ContentsBasis.ESTIMATED);
        assertThat(contents.forSizing()).isEqualTo(contents.high());
    }

    @ParameterizedTest
    @EnumSource
    void theRangeHoldsEveryRuleOfItsKind(EmitterType type) {
        Contents contents = QuickEstimate.of(Power.kilowatts(1), type).contents();
        assertThat(type.rules())
                .isNotEmpty()
                .allSatisfy(rule -> assertThat(rule.litresPerKilowatt())
                        .isBetween(litres(contents.low()) - 1e-9, litres(contents.high()) + 1e-9));
        assertThat(EmitterType.named(type.toString())).isEqualTo(type);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NOT_KNOWN")
    void theTypicalRuleIsMarkedCommonPractice(EmitterType type) {
        assertThat(type.rules().get(0).source().provenance()).isEqualTo(Provenance.COMMON_PRACTICE);
    }

    @Test
    void recommendsTheHighEnd() {
        Contents contents = QuickEstimate.of(Power.kilowatts(24), EmitterType.STEEL_PANEL_RADIATORS)
                .contents();
        assertThat(contents.cautions())
                .singleElement()
                .satisfies(caution -> assertThat(caution.text()).contains("size for its high end"));
        assertThat(contents.text(UnitSystem.SI))
                .startsWith("Contents, estimated: 215.6 L to 323.3 L, typically 264 L\n")
                .contains("Note: An estimate by rule of thumb: size for its high end")
                .contains("[COMMON_PRACTICE]");
    }

    @Test
    void partsAddUp() {
        Contents contents = QuickEstimate.of(Power.kilowatts(10), EmitterType.UNDERFLOOR)
                .and(Power.kilowatts(20), EmitterType.STEEL_PANEL_RADIATORS)
                .and(PieceRule.DOMESTIC_THERMAL_STORE.item(1))
                .contents();
        assertThat(litres(contents.typical())).isCloseTo(230 + 220 + 100, within(1e-9));
        assertThat(contents.items()).hasSize(3);
    }

    @Test
    void openVentedHoldsATenthMore() {
        QuickEstimate sealed = QuickEstimate.of(Power.kilowatts(10), EmitterType.CAST_IRON_RADIATORS);
        assertThat(litres(sealed.openVented().contents().typical())).isCloseTo(154, within(1e-9));
        assertThat(litres(sealed.openVented().contents().high()))
                .isCloseTo(1.1 * litres(sealed.contents().high()), within(1e-9));
    }

    @Test
    void inInchPoundUnits() {
        Contents contents = QuickEstimate.of(Power.btuPerHour(10_000), EmitterType.CAST_IRON_RADIATORS)
                .contents();
        assertThat(contents.typical().in(Units.US_GALLON)).isCloseTo(10.84, within(0.005));
        assertThat(contents.table(UnitSystem.IP).get(1))
                .startsWith("whole system, cast iron radiators", "10 kBtu/h", "1.084 gal/(kBtu/h)");
    }

    @Test
    void whatCannotBe() {
        assertThatThrownBy(() -> QuickEstimate.of(Power.kilowatts(0), EmitterType.UNDERFLOOR))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage("output 0 kW (0 Btu/h) is not allowed: it must be above zero; give the rated heat output");
        assertThatThrownBy(() -> EmitterType.named("radiators"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "kind of emitters \"radiators\" is not allowed: it must be one of convectors, air handling units and"
                                + " fan coils, steel panel radiators, low-content radiators, cast iron radiators, floor heating, long"
                                + " distributed mains, small domestic system, emitters not known; take the nearest, or \"emitters not"
                                + " known\"");
    }
}
