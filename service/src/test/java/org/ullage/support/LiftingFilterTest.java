package org.ullage.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.support.LiftingFilter.People;
import org.ullage.support.LiftingFilter.Zone;

class LiftingFilterTest {

    /** HSE L23, lifting and lowering filter, close to the body (second-hand); the fourth row from memory. */
    @ParameterizedTest
    @CsvSource({
        "ABOVE_SHOULDER, 10, 7",
        "SHOULDER_TO_ELBOW, 20, 13",
        "ELBOW_TO_KNUCKLE, 25, 16",
        "KNUCKLE_TO_MID_LOWER_LEG, 20, 13",
        "BELOW_MID_LOWER_LEG, 10, 7",
    })
    void closeToTheBody(Zone zone, double men, double women) {
        assertThat(new LiftingFilter(zone, false, People.MEN).limit()).isEqualTo(Mass.kilograms(men));
        assertThat(new LiftingFilter(zone, false, People.WOMEN).limit()).isEqualTo(Mass.kilograms(women));
    }

    /** Roughly half with the arms extended. */
    @ParameterizedTest
    @EnumSource
    void armsExtended(Zone zone) {
        for (People people : People.values()) {
            double share = new LiftingFilter(zone, true, people)
                    .limit()
                    .dividedBy(new LiftingFilter(zone, false, people).limit());
            assertThat(share).isBetween(0.4, 0.65);
        }
    }

    /** HSE L23: 30 % off at 1-2, 50 % at 5-8, 80 % above 12 lifts a minute. */
    @ParameterizedTest
    @CsvSource({"0.5, 25", "1, 17.5", "2, 17.5", "3, 12.5", "5, 12.5", "8, 12.5", "10, 5", "13, 5"})
    void repetition(double perMinute, double kilograms) {
        LiftingFilter filter = new LiftingFilter(Zone.ELBOW_TO_KNUCKLE, false, People.MEN);
        assertThat(filter.limit(perMinute).in(Units.KILOGRAM)).isCloseTo(kilograms, within(1e-9));
    }

    @Test
    void verdictAndText() {
        LiftingFilter filter = new LiftingFilter(Zone.ABOVE_SHOULDER, false, People.WOMEN);
        assertThat(filter.check(Mass.kilograms(7)).passes()).isTrue();
        assertThat(filter.check(Mass.kilograms(8)).passes()).isFalse();
        assertThat(filter.text(UnitSystem.IP)).startsWith("lifting filter: 15.43 lb [PUBLISHED] HSE");
        assertThat(filter.cautions()).isNotEmpty();
        assertThatThrownBy(() -> filter.limit(-1)).isInstanceOf(OutOfRangeException.class);
    }
}
