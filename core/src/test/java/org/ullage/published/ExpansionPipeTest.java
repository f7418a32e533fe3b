package org.ullage.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Power;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

class ExpansionPipeTest {

    @Test
    void polishBoreIsAtLeastTwentyMillimetres() {
        // 0.7 sqrt(2500) = 35; 0.7 sqrt(100) = 7
        assertThat(ExpansionPipe.polish(Volume.litres(2500)).in(Units.MILLIMETRE))
                .isCloseTo(35, within(1e-9));
        assertThat(ExpansionPipe.polish(Volume.litres(100)).in(Units.MILLIMETRE))
                .isCloseTo(20, within(1e-9));
    }

    @Test
    void czechBoreByOutput() {
        assertThat(ExpansionPipe.czech(Power.kilowatts(100)).in(Units.MILLIMETRE))
                .isCloseTo(16, within(1e-9));
        assertThat(ExpansionPipe.czechWithSteam(Power.kilowatts(100)).in(Units.MILLIMETRE))
                .isCloseTo(29, within(1e-9));
    }

    @Test
    void domesticPipeInTheUnitedKingdom() {
        assertThat(ExpansionPipe.UK_DOMESTIC_LEAST.in(Units.MILLIMETRE)).isCloseTo(15, within(1e-9));
    }

    @Test
    void negativeInputsAreRefused() {
        assertThatThrownBy(() -> ExpansionPipe.polish(Volume.litres(-1))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> ExpansionPipe.czech(Power.kilowatts(-1))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void withoutWaterOrOutputTheLeastBoreIsLeft() {
        assertThat(ExpansionPipe.polish(Volume.litres(0)).in(Units.MILLIMETRE)).isCloseTo(20, within(1e-9));
        assertThat(ExpansionPipe.czech(Power.kilowatts(0)).in(Units.MILLIMETRE)).isCloseTo(10, within(1e-9));
        assertThat(ExpansionPipe.czechWithSteam(Power.kilowatts(0)).in(Units.MILLIMETRE))
                .isCloseTo(15, within(1e-9));
    }
}
