package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;

class HangerRodTest {

    private static double pounds(HangerRod rod, RodLoads basis) {
        return rod.load(basis).in(Units.POUND_FORCE);
    }

    /**
     * Root areas as printed (from memory), three digits; loads of a rod table that prints 9,000 psi on the root area rounded to hundreds
     * (read in an open engineering reference); MSS SP-58 before and from 2002 (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "ROD_3_8, 0.0678, 600, 610, 730",
        "ROD_1_2, 0.126, 1100, 1130, 1350",
        "ROD_5_8, 0.202, 1800, 1810, 2160",
        "ROD_3_4, 0.302, 2700, 2710, 3230",
        "ROD_7_8, 0.419, 3800, 3770, 4480",
        "ROD_1, 0.551, 5000, 4960, 5900",
    })
    void printedRows(HangerRod rod, double area, double hundreds, double before2002, double from2002) {
        double lastDigit = area < 0.1 ? 0.00005 : 0.0005;
        assertThat(rod.rootArea().in(Units.SQUARE_INCH)).isCloseTo(area, within(lastDigit));
        assertThat(pounds(rod, RodLoads.ROOT_AREA_RULE)).isCloseTo(area * 9000, within(9000 * lastDigit));
        assertThat(100.0 * Math.round(pounds(rod, RodLoads.ROOT_AREA_RULE) / 100))
                .isEqualTo(hundreds);
        assertThat(pounds(rod, RodLoads.MSS_BEFORE_2002)).isCloseTo(before2002, within(1e-9));
        assertThat(pounds(rod, RodLoads.MSS_2002_ON)).isCloseTo(from2002, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void unlessAnEditionIsNamedTheLowestCounts(HangerRod rod) {
        double lowest = pounds(rod, RodLoads.LOWEST);
        for (RodLoads basis : RodLoads.values()) {
            assertThat(lowest).isLessThanOrEqualTo(pounds(rod, basis));
        }
        assertThat(lowest).isGreaterThan(0.98 * pounds(rod, RodLoads.MSS_BEFORE_2002));
        assertThat(pounds(rod, RodLoads.MSS_2002_ON)).isGreaterThan(1.1 * lowest);
    }

    @Test
    void sourceFollowsTheBasis() {
        assertThat(HangerRod.ROD_3_8.source(RodLoads.MSS_2002_ON).provenance()).isEqualTo(Provenance.FROM_MEMORY);
        assertThat(HangerRod.ROD_3_8.source(RodLoads.ROOT_AREA_RULE).provenance())
                .isEqualTo(Provenance.PUBLISHED);
        assertThat(HangerRod.ROD_3_8.source(RodLoads.LOWEST))
                .isEqualTo(HangerRod.ROD_3_8.source(RodLoads.MSS_BEFORE_2002));
    }

    @Test
    void verdictNamesTheEdition() {
        LimitCheck<Force> check = HangerRod.ROD_3_8.check(Force.poundsForce(700), RodLoads.MSS_2002_ON);
        assertThat(check.passes()).isTrue();
        assertThat(check.text(UnitSystem.IP)).startsWith("pull on 3/8 in rod by MSS SP-58 of 2002 and later: passes");
        assertThat(HangerRod.ROD_3_8
                        .check(Force.poundsForce(700), RodLoads.LOWEST)
                        .passes())
                .isFalse();
    }

    /** 1-1/4 in with 7 threads: thread tables print a root area of 0.890 in2 (from memory). */
    @Test
    void anyOtherCoarseThreadByTheRule() {
        assertThat(HangerRod.rootArea(Length.of(1.25, Units.INCH), 7).in(Units.SQUARE_INCH))
                .isCloseTo(0.890, within(0.0005));
        assertThatThrownBy(() -> HangerRod.rootArea(Length.of(0.1, Units.INCH), 8))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> HangerRod.rootArea(Length.of(1, Units.INCH), 0))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> HangerRod.rootArea(Length.of(1, Units.INCH), -8))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("threads per inch");
    }
}
