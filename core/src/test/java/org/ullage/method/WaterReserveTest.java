package org.ullage.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;

class WaterReserveTest {

    private static final WaterReserve RULE = WaterReserve.ofContents(
                    VolumeFraction.percent(0.5), Volume.litres(3), Source.commonPractice("test"))
            .orOfSmallVessel(Volume.litres(15), VolumeFraction.percent(20), Source.commonPractice("test"));

    @Example
    void noneIsNone() {
        assertThat(WaterReserve.NONE.cubicMetres(10, 0.3, 2.5)).isZero();
        assertThat(WaterReserve.NONE).hasToString("none");
    }

    @Example
    void largeLoopKeepsHalfAPercent() {
        assertThat(RULE.cubicMetres(2, 0.060, 2.5)).isCloseTo(0.010, within(1e-15));
    }

    @Example
    void smallerLoopKeepsThreeLitres() {
        assertThat(RULE.cubicMetres(0.4, 0.012, 2.5)).isCloseTo(0.003, within(1e-15));
    }

    @Example
    void smallVesselKeepsAFifthOfItself() {
        // V = (2 L + 0.2 V) x 2.5 gives V = 10 L and a reserve of 2 L
        assertThat(RULE.cubicMetres(0.1, 0.002, 2.5)).isCloseTo(0.002, within(1e-15));
    }

    @Example
    void smallVesselRuleNeedsAVesselThatCanHoldTheShare() {
        // taking 5 volumes of vessel for one of water, a fifth of the vessel is all it can ever take
        assertThat(RULE.cubicMetres(0.1, 0.0001, 5)).isCloseTo(0.003, within(1e-15));
        assertThat(RULE.cubicMetres(0.1, 0.0001, 6)).isCloseTo(0.003, within(1e-15));
    }

    @Property
    void smallVesselIsAtMostFifteenLitresAndHoldsItsShare(
            @ForAll @DoubleRange(min = 0.01, max = 20) double litres,
            @ForAll @DoubleRange(min = 1.01, max = 4.99) double volumePerWater) {
        double expansion = litres / 1000;
        double reserve = RULE.cubicMetres(0.1, expansion, volumePerWater);
        double vessel = (expansion + reserve) * volumePerWater;
        if (vessel <= 0.015) {
            assertThat(reserve).isCloseTo(0.2 * vessel, within(1e-12));
        } else {
            assertThat(reserve).isEqualTo(0.003);
        }
    }

    @Example
    void shareOfTheExpansionIsAFactorOnTheVessel() {
        WaterReserve quarter = WaterReserve.ofExpansion(0.25, Source.commonPractice("test"));
        assertThat(quarter.cubicMetres(1, 0.02, 2.5)).isEqualTo(0.005);
        assertThat(quarter).hasToString("0.25 x the net expansion");
        assertThatThrownBy(() -> WaterReserve.ofExpansion(-0.1, Source.commonPractice("test")))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("-0.1");
    }

    @Example
    void saysItselfInWords() {
        assertThat(RULE).hasToString("0.5 vol% of the contents, at least 3 L; 20 vol% of a vessel up to 15 L");
    }

    @Example
    void stepShowsThePartsTheRuleHas() {
        Source test = Source.commonPractice("test");
        assertThat(formula(WaterReserve.NONE)).isEqualTo("none in this method");
        assertThat(formula(WaterReserve.ofContents(VolumeFraction.percent(1), Volume.litres(0), test)))
                .isEqualTo("max(r_s * V_s, V_least)");
        assertThat(formula(WaterReserve.ofContents(VolumeFraction.percent(0), Volume.litres(3), test)))
                .isEqualTo("max(r_s * V_s, V_least)");
        assertThat(formula(WaterReserve.ofExpansion(0.25, test))).isEqualTo("max(r_s * V_s, V_least) + r_e * V_e");
        WaterReserve onlySmall = WaterReserve.NONE.orOfSmallVessel(Volume.litres(15), VolumeFraction.percent(20), test);
        assertThat(formula(onlySmall)).isEqualTo("r_v * V_e * k / (1 - r_v * k)");
    }

    private static String formula(WaterReserve rule) {
        return rule.step(Volume.litres(100), Volume.litres(2), 2.5, Volume.litres(1))
                .formula();
    }
}
